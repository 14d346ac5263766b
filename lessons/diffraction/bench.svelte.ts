import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { step } from '#core/quantity/answers-from.ts';
import { airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { contrastFormula } from '#core/wave/contrast.formula.ts';
import { cutoffFrequencyFormula } from '#core/wave/cutoff-frequency.formula.ts';
import { nyquistFrequencyFormula } from '#core/wave/nyquist-frequency.formula.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { subjectChoice } from '#site/state/subjects.ts';

/** Three colours to try, by one wavelength each from the middle of what people call by that name (common practice). */
const light = {
  blue: { label: 'blue, 450 nm', wavelength: 0.00045 },
  green: { label: 'green, 550 nm', wavelength: 0.00055 },
  red: { label: 'red, 650 nm', wavelength: 0.00065 },
};

/** Diffraction does not ask for the focal length; perspective does, and takes one that is usual. */
const seenFrom = step({
  from: ['magnification', 'pupil-magnification'],
  gives: ['entrance-pupil-distance'],
  evaluate: (lens) => ({ entrancePupilDistance: entrancePupilDistance({ ...lens, focalLength: 100 }) }),
});

export const bench = new Bench({
  inputs: {
    'f-number': 8,
    magnification: 1,
    'spatial-frequency': 40,
    ...startsOf(light.green, ['wavelength']),
    ...startsOf(bodies['body-36'], ['sensor-width', 'pixel-pitch', 'circle-of-confusion']),
    'pupil-magnification': 1,
  },
  choices: {
    sensor: choiceOf('Camera', bodies, ['sensor-width', 'pixel-pitch']),
    [circleChoice]: circleByBody,
    light: choiceOf('Colour of light', light, ['wavelength']),
    subject: subjectChoice(['stamp', 'hoverfly-head', 'bay-leaf', 'slanted-scale']),
  },
  formulas: [
    effectiveFNumberFormula,
    airyDiameterFormula,
    cutoffFrequencyFormula,
    contrastFormula,
    nyquistFrequencyFormula,
    depthOfFieldCloseUpFormula,
    seenFrom,
  ],
  // From the cutoff on the contrast is zero, and that is no matter of rounding.
  words: { contrast: (share) => (share === 0 ? '0\u202f%, an even grey' : undefined) },
});
