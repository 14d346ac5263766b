import { defocusBlurOfEndsFormula } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { step } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { frameCount } from '#core/stack/frame-count.formula.ts';
import { airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { balancedFNumberFormula } from '#core/wave/balanced-f-number.formula.ts';
import { bestFNumber, worstContrast } from '#core/wave/best-f-number.ts';
import { spatialFrequencyOfCircleFormula } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { depthOf, marksFrom, ofSubject, smallestMark } from './figures/depth.ts';
import { subjects } from './figures/subjects.ts';

/** The least contrast anywhere in the depth, at the f-number that is set. */
const worst = step({
  from: [...ofSubject, 'f-number'],
  gives: ['contrast'],
  evaluate: ({ fNumber, ...subject }) => ({ contrast: worstContrast(depthOf(subject), fNumber).contrast }),
});

/** The mark at which that is most. */
const best = step({
  from: ofSubject,
  gives: ['best-f-number', 'best.contrast'],
  evaluate(subject) {
    const found = bestFNumber(depthOf(subject), marksFrom(subject.maxAperture));
    return found ? { bestFNumber: found.fNumber, bestContrast: found.contrast } : {};
  },
});

/** As many frames as the close-up form of the depth asks for. */
const frames = step({
  from: ['subject-depth', 'depth-of-field-close-up', 'overlap'],
  gives: ['frame-count'],
  evaluate: ({ depthOfFieldCloseUp, ...given }) => ({
    frameCount: frameCount({ ...given, depthOfField: depthOfFieldCloseUp }),
  }),
});

/** Nothing here asks for the focal length; perspective does, and takes that of the crate's macro lens at life size. */
const seenFrom = step({
  from: ['magnification', 'pupil-magnification'],
  gives: ['entrance-pupil-distance'],
  evaluate: (lens) => ({
    entrancePupilDistance: entrancePupilDistance({ ...lens, focalLength: lenses['lens-90']['focal-length'] }),
  }),
});

const mark = (fNumber: number) => printQuantity('f-number', fNumber);

export const bench = new Bench({
  inputs: {
    ...startsOf(subjects['hoverfly-head'], ['subject-depth']),
    magnification: 1,
    'f-number': 8,
    ...startsOf(lenses['lens-90'], ['pupil-magnification', 'max-aperture']),
    // What real lenses have wide open is less; more would be soft at every mark.
    'spherical-aberration': { start: 0, least: -5, most: 5 },
    ...startsOf(bodies['body-36'], ['circle-of-confusion', 'sensor-width', 'pixel-pitch']),
    wavelength: 0.00055,
    overlap: 0.25,
  },
  choices: {
    subject: { ...choiceOf('Subject', subjects, ['subject-depth']), kept: true },
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
    [circleChoice]: circleByBody,
  },
  handles: {
    'spatial-frequency': {
      gives: 'circle-of-confusion',
      from: ['spatial-frequency'],
      evaluate: ({ spatialFrequency }: { spatialFrequency: number }) => 1 / (2 * spatialFrequency),
    },
  },
  formulas: [
    spatialFrequencyOfCircleFormula,
    effectiveFNumberFormula,
    airyDiameterFormula,
    defocusBlurOfEndsFormula,
    balancedFNumberFormula,
    worst,
    best,
    depthOfFieldCloseUpFormula,
    frames,
    seenFrom,
  ],
  words: {
    contrast(value, known) {
      if (value === undefined) return `none: this lens opens to ${mark(known['max-aperture']!)}`;
      return value === 0 ? '0\u202f%: lost in places' : undefined;
    },
    'best-f-number': { none: 'none: one frame cannot' },
    'best.contrast': { none: 'none at any mark' },
    'balanced-f-number'(value, known) {
      if (value! > smallestMark) return `${mark(value!)}, past the last mark`;
      return value! < known['max-aperture']! ? `${mark(value!)}, wider than open` : undefined;
    },
  },
});
