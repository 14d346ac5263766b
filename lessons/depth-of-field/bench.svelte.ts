import { circleOfConfusionByDiagonalFormula } from '#core/depth/circle-of-confusion-by-diagonal.formula.ts';
import { circleOfConfusionByPixelsFormula } from '#core/depth/circle-of-confusion-by-pixels.formula.ts';
import { circleOfConfusionByViewingFormula } from '#core/depth/circle-of-confusion-by-viewing.formula.ts';
import { circleOfConfusionByWidthFormula } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfFieldFormula } from '#core/depth/depth-of-field.formula.ts';
import { farLimitFormula } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistanceFormula } from '#core/depth/hyperfocal-distance.formula.ts';
import { nearLimitFormula } from '#core/depth/near-limit.formula.ts';
import { waveDepthFormula } from '#core/depth/wave-depth.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { numericalApertureFormula } from '#core/gaussian/numerical-aperture.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { filledBy } from '#site/state/choice.ts';
import { byBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies, lenses } from '#site/state/crate.ts';
import { subjectChoice } from '#site/state/subjects.ts';

const ofBody = ['sensor-width', 'sensor-height', 'pixel-pitch'] as const;
/** A print of 300 mm looked at from 400 mm, and the crate's larger body. */
const viewing = { 'print-width': 300, 'viewing-distance': 400, ...startsOf(bodies['body-36'], ofBody) };

/** Above this numerical aperture geometry alone misleads (README of `core/depth`, Waves): the wave's depth is added to it. */
const wideCone = 0.1;

export const bench = new Bench({
  inputs: {
    magnification: 0.5,
    ...startsOf(lenses['lens-50'], ['f-number', 'focal-length']),
    ...startsOf(bodies['body-36'], ['circle-of-confusion']),
    ...startsOf(lenses['lens-50'], ['pupil-magnification']),
    ...viewing,
    wavelength: 0.00055,
  },
  choices: {
    [circleChoice]: {
      label: 'Circle of confusion',
      options: {
        [byBody]: { label: 'by width, 1/1800', fills: filledBy(circleOfConfusionByWidthFormula) },
        viewing: { label: 'by how the print is seen', fills: filledBy(circleOfConfusionByViewingFormula) },
        diagonal: { label: 'by diagonal, 1/1500', fills: filledBy(circleOfConfusionByDiagonalFormula) },
        pixels: { label: 'by pixels, two of them', fills: filledBy(circleOfConfusionByPixelsFormula) },
      },
    },
    sensor: choiceOf('Camera', bodies, ofBody),
    subject: subjectChoice(),
  },
  formulas: [
    effectiveFNumberFormula,
    entrancePupilFormula,
    entrancePupilDistanceFormula,
    nearLimitFormula,
    farLimitFormula,
    depthOfFieldFormula,
    depthOfFieldCloseUpFormula,
    hyperfocalDistanceFormula,
    numericalApertureFormula,
    waveDepthFormula,
  ],
  words: {
    'depth-of-field': { infinite: '∞, no far end' },
    'far-limit': { infinite: '∞, everything behind is sharp' },
    'numerical-aperture': { none: 'no lens in air has so wide a cone' },
    'wave-depth': (value = 0, known) =>
      known['numerical-aperture']! > wideCone ? `${printQuantity('wave-depth', value)}, to be added to T` : undefined,
  },
});
