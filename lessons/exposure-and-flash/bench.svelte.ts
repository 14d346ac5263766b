import { ambientShareFormula } from '#core/exposure/ambient-share.formula.ts';
import { ambientUnderexposureFormula } from '#core/exposure/ambient-underexposure.formula.ts';
import { backgroundUnderexposureFormula } from '#core/exposure/background-underexposure.formula.ts';
import { effectiveFNumberFromGuideNumberFormula } from '#core/exposure/effective-f-number-from-guide-number.formula.ts';
import { exposureTimeFromLuminanceFormula } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { fNumberForFlashFormula } from '#core/exposure/f-number-for-flash.formula.ts';
import { flashPowerForFNumberFormula } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { flashUnderexposureFormula } from '#core/exposure/flash-underexposure.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import { motionBlurOfSubjectFormula } from '#core/exposure/motion-blur-of-subject.formula.ts';
import { shutterTimeWithFlash } from '#core/exposure/shutter-with-flash.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { Bench, choiceOf } from '#site/state/bench.svelte.ts';
import { lenses } from '#site/state/crate.ts';
import { lights, twinArm } from '#site/state/crate-light.ts';
import { flashChoice, powers, shinesFor } from './figures/gear.ts';
import { ambientInWords, brightnessInWords, powerInWords } from './figures/in-words.ts';

/** How long the shutter has to be open with a flash. */
const shutter = step({
  from: ['exposure-time', 'sync-speed'],
  gives: ['shutter.exposure-time'],
  evaluate: (given) => ({ shutterExposureTime: shutterTimeWithFlash(given) }),
});

/** The light already there, by the settings that it asks for. */
const lightThere = step({
  from: ['effective-f-number', 'ambient.exposure-time', 'iso'],
  gives: ['light-value'],
  evaluate: ({ effectiveFNumber, ambientExposureTime, iso }) => ({
    lightValue: lightValue({ effectiveFNumber, exposureTime: ambientExposureTime, iso }),
  }),
});

const power = 1 / 64;

export const bench = new Bench({
  inputs: {
    'flash-power': power,
    'f-number': 11,
    'exposure-time': 1 / 200,
    'flash-distance': { start: 150, least: 10 },
    'guide-number': twinArm['guide-number'],
    'flash-duration': shinesFor(power),
    'sync-speed': twinArm['sync-speed'],
    luminance: lights.shade.luminance,
    'reflected-light-constant': reflectedLightConstants.common,
    iso: 100,
    'subject-speed': 20,
    'background-distance': 300,
    magnification: 1,
    'pupil-magnification': lenses['lens-90']['pupil-magnification'],
  },
  choices: {
    power: choiceOf('Power', powers, ['flash-power']),
    flash: flashChoice,
    light: choiceOf('The subject is', lights, ['luminance']),
    lens: choiceOf('Pupils of', lenses, ['pupil-magnification']),
  },
  formulas: [
    effectiveFNumberFormula,
    lightLossFormula,
    ...under('flash', [effectiveFNumberFromGuideNumberFormula, fNumberForFlashFormula]),
    ...under('needed', [flashPowerForFNumberFormula]),
    flashUnderexposureFormula,
    ...under('ambient', [exposureTimeFromLuminanceFormula]),
    shutter,
    ambientUnderexposureFormula,
    ambientShareFormula,
    ...under('flash', [motionBlurOfSubjectFormula], { 'exposure-time': 'flash-duration' }),
    ...under('ambient', [motionBlurOfSubjectFormula], { 'exposure-time': 'shutter.exposure-time' }),
    lightThere,
    backgroundUnderexposureFormula,
  ],
  words: {
    'needed.flash-power': powerInWords,
    'flash-underexposure': (stops) => (stops === undefined ? undefined : brightnessInWords(stops)),
    'ambient-underexposure': ambientInWords,
  },
});
