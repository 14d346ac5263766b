import { cropFactorFormula } from '#core/gaussian/crop-factor.formula.ts';
import { fieldHeightFormula } from '#core/gaussian/field-height.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { magnificationFromFieldFormula } from '#core/gaussian/magnification-from-field.formula.ts';
import { pixelsPerMillimetreFormula } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';
import { subjects } from './figures/subjects.ts';

const ofBody = ['sensor-width', 'sensor-height', 'pixel-pitch'] as const;

export const bench = new Bench({
  inputs: {
    magnification: 0.5,
    ...startsOf(subjects['postage-stamp'], ['subject-width']),
    ...startsOf(bodies['body-36'], ofBody),
  },
  choices: {
    sensor: choiceOf('Camera', bodies, ofBody),
    subject: choiceOf('Subject', subjects, ['subject-width']),
    ruler: keptChoice('Marks on the ruler', { mm: 'millimetres', in: 'inches' }),
  },
  handles: { 'field-width': magnificationFromFieldFormula },
  formulas: [fieldWidthFormula, fieldHeightFormula, imageWidthFormula, cropFactorFormula, pixelsPerMillimetreFormula],
  words: {
    // An image may be wider than the sensor that should catch it. That is an answer, and needs words.
    'image-width': (value = 0, known) =>
      value > known['sensor-width']! ? `${printQuantity('image-width', value)}, wider than the sensor` : undefined,
  },
});
