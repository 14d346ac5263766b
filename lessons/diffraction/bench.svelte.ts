import { circleOfConfusionByPixels } from '#core/depth/circle-of-confusion-by-pixels.formula.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { contrast } from '#core/wave/contrast.formula.ts';
import { cutoffFrequency } from '#core/wave/cutoff-frequency.formula.ts';
import { nyquistFrequency } from '#core/wave/nyquist-frequency.formula.ts';
import { subjectChoice } from '#site/figures/picture/photographed.ts';
import type { Answer } from '#site/state/answer.ts';
import { Bench, choiceOf } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';

/** Three colours to try, by one wavelength each from the middle of what people call by that name (common practice). */
const light = {
  blue: { label: 'blue, 450 nm', wavelength: 0.00045 },
  green: { label: 'green, 550 nm', wavelength: 0.00055 },
  red: { label: 'red, 650 nm', wavelength: 0.00065 },
};

export const bench = new Bench({
  inputs: {
    'f-number': 8,
    magnification: 1,
    'pupil-magnification': 1,
    wavelength: light.green.wavelength,
    'pixel-pitch': bodies['body-36']['pixel-pitch'],
    'spatial-frequency': 40,
  },
  choices: {
    sensor: choiceOf('Camera', bodies, ['pixel-pitch']),
    light: choiceOf('Colour of light', light, ['wavelength']),
    subject: subjectChoice(['stamp', 'hoverfly-head', 'bay-leaf', 'slanted-scale']),
  },
  compute(given) {
    const { magnification, wavelength } = given;
    const effective = effectiveFNumber({
      fNumber: given['f-number'],
      magnification,
      pupilMagnification: given['pupil-magnification'],
    });
    const cone = { wavelength, effectiveFNumber: effective };
    const cutoff = cutoffFrequency(cone);
    const circle = circleOfConfusionByPixels({ pixelPitch: given['pixel-pitch'] });
    return {
      'effective-f-number': effective,
      'airy-diameter': airyDiameter(cone),
      'cutoff-frequency': cutoff,
      contrast: orNothing(contrast({ spatialFrequency: given['spatial-frequency'], cutoffFrequency: cutoff })),
      'nyquist-frequency': nyquistFrequency({ pixelPitch: given['pixel-pitch'] }),
      'circle-of-confusion': circle,
      'depth-of-field-close-up': depthOfFieldCloseUp({
        circleOfConfusion: circle,
        effectiveFNumber: effective,
        magnification,
      }),
    };
  },
});

/** From the cutoff on the contrast is zero, and that is no matter of rounding. */
function orNothing(share: number): Answer {
  return share > 0 ? share : { value: 0, words: '0\u202f%, nothing gets through' };
}
