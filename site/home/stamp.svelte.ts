import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { imageWidthFormula } from '#core/gaussian/image-width.formula.ts';
import { Bench, startsOf } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';

export const sensor = bodies['body-36'];
/** A stamp of the crate's demonstration, mm. */
export const stampWidth = 30;

/** The one state of the figure that the workbook opens with. */
export const bench = new Bench({
  inputs: {
    magnification: { start: 0.5, least: 0.1, most: 5 },
    'subject-width': stampWidth,
    ...startsOf(sensor, ['sensor-width']),
  },
  formulas: [imageWidthFormula, fieldWidthFormula],
});
