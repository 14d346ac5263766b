import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { imageWidth } from '#core/gaussian/image-width.formula.ts';
import { Bench } from '#site/state/bench.svelte.ts';
import { bodies } from '#site/state/crate.ts';

export const sensor = bodies['body-36'];
/** A stamp of the crate's demonstration, mm. */
export const stampWidth = 30;

/** The one state of the figure that the workbook opens with. */
export const bench = new Bench({
  inputs: { magnification: { start: 0.5, least: 0.1, most: 5 } },
  compute: ({ magnification }) => ({
    'image-width': imageWidth({ subjectWidth: stampWidth, magnification }),
    'field-width': fieldWidth({ sensorWidth: sensor['sensor-width'], magnification }),
  }),
});
