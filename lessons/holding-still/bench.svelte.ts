import { electrons, electronsFormula } from '#core/exposure/electrons.formula.ts';
import { exposureTimeForMotionBlurFormula } from '#core/exposure/exposure-time-for-motion-blur.formula.ts';
import { isoFromLuminance, isoFromLuminanceFormula } from '#core/exposure/iso-from-luminance.formula.ts';
import { motionBlurOfSubjectFormula } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { motionBlurSidewaysFormula } from '#core/exposure/motion-blur-sideways.formula.ts';
import { motionBlurTogetherFormula } from '#core/exposure/motion-blur-together.formula.ts';
import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurningAboutSensor } from '#core/exposure/motion-blur-turning-about-sensor.formula.ts';
import { assumedPixel } from '#core/exposure/photons.ts';
import { signalToNoiseFormula, type signalToNoise } from '#core/exposure/signal-to-noise.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { holdings, lights } from '#site/state/crate-light.ts';
import { lensAt, lensHeld } from '#site/state/lens-in-use.ts';
import { metered } from '#site/state/metered.ts';
import { movers, ofLens, pivots } from './figures/gear.ts';
import {
  electronsInWords,
  isoInWords,
  isPrinted,
  signalToNoiseInWords,
  slowestInWords,
} from './figures/light-in-words.ts';

type OfIso = Parameters<typeof isoFromLuminance>[0];
type OfElectrons = Parameters<typeof electrons>[0];
type OfRatio = Parameters<typeof signalToNoise>[0];

/** The streak of a camera that turns, about whichever point is chosen. */
const turning = step({
  from: [
    'focal-length',
    'magnification',
    'principal-separation',
    'pupil-magnification',
    'shake-rate',
    'exposure-time',
    'stabilisation',
  ],
  gives: ['turning.motion-blur'],
  evaluate: (given, chosen) => ({
    turningMotionBlur:
      chosen['turns-about'] === 'entrance-pupil'
        ? motionBlurTurningAboutPupil(given)
        : motionBlurTurningAboutSensor(given),
  }),
});

const lifeSize = 1;

export const bench = new Bench({
  inputs: {
    'exposure-time': 1 / 125,
    magnification: lifeSize,
    ...startsOf(movers.rest, ['subject-speed']),
    ...startsOf(holdings.hand, ['shake-rate', 'sideways-speed']),
    stabilisation: 0,
    ...startsOf(lensAt('lens-90', lifeSize), ofLens),
    'f-number': 8,
    ...startsOf(bodies['body-36'], ['circle-of-confusion', 'sensor-width', 'pixel-pitch']),
    'quantum-efficiency': assumedPixel.quantumEfficiency,
    'read-noise': assumedPixel.readNoise,
    ...startsOf(lights.shade, ['luminance']),
  },
  choices: {
    subject: choiceOf('Subject', movers, ['subject-speed']),
    holding: choiceOf('Held', holdings, ['shake-rate', 'sideways-speed']),
    'turns-about': keptChoice('It turns about', pivots),
    lens: lensHeld(ofLens),
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
    [circleChoice]: circleByBody,
    light: choiceOf('The subject is', lights, ['luminance']),
  },
  formulas: [
    turning,
    ...under('sideways', [motionBlurSidewaysFormula]),
    ...under('subject', [motionBlurOfSubjectFormula]),
    motionBlurTogetherFormula,
    {
      ...exposureTimeForMotionBlurFormula,
      holds: ({ motionBlur }: { motionBlur: number }) => isPrinted.streak(motionBlur),
    },
    effectiveFNumberFormula,
    metered,
    // Where words say what is the matter, a line of noughts would say less.
    { ...isoFromLuminanceFormula, holds: (given: OfIso) => isPrinted.iso(isoFromLuminance(given)) },
    {
      ...electronsFormula,
      holds: (given: OfElectrons) => isPrinted.iso(given.iso) && isPrinted.electrons(electrons(given)),
    },
    { ...signalToNoiseFormula, holds: (given: OfRatio) => isPrinted.electrons(given.electrons) },
  ],
  words: {
    'turning.motion-blur': { none: 'none: this lens has no such focus' },
    'slowest.exposure-time': slowestInWords,
    iso: isoInWords,
    electrons: electronsInWords,
    'signal-to-noise': signalToNoiseInWords,
  },
});
