import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width';

/**
 * How many circles of confusion lie side by side across a picture that every page starts with. Seen from 6/π = 1.91 times its own
 * width, a picture's 1/1800 is one arcminute: an A5 page, 210 mm wide, at 401 mm.
 */
export const circlesAcrossWidth = 1800;

/**
 * The circle of confusion by the picture's width: the largest blur that a whole picture hides from an eye of acuity 1.0 when it is
 * seen as one holds a page to read.
 *
 * c = W_x / 1800
 *
 * @param given.sensorWidth *W_x*, mm, above 0
 * @returns *c*, mm on the sensor: 0.02 for 36 mm. It is a length on the sensor, and the same share of any print; it knows nothing of
 *   crops, of pixels, or of a print looked at from nearer than 1.91 times its width.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes the arcminute to be one line, as `circleOfConfusionByViewing` does.
 * Source: acuity 1.0 is a gap of one arcminute: ISO 8596 (from memory). Derived in [README](README.md#circle-of-confusion).
 *
 * @example circleOfConfusionByWidth({ sensorWidth: 36 }) // 0.02
 */
export function circleOfConfusionByWidth({ sensorWidth }: Named<Inputs>): number {
  return requirePositive('sensor-width', sensorWidth) / circlesAcrossWidth;
}

export const circleOfConfusionByWidthFormula = {
  gives: 'circle-of-confusion',
  from: ['sensor-width'],
  tex: String.raw`\q{circle-of-confusion} = \frac{\q{sensor-width}}{1800}`,
  evaluate: circleOfConfusionByWidth,
  says: 'A fixed share of the picture’s width: one arcminute in a whole picture seen from 1.9 times its width, as an A5 page is when you read it.',
  source: 'ISO 8596 for the arcminute (from memory); derived in core/depth/README.md#circle-of-confusion',
  checkedBy: ['viewing-acuity'],
} as const satisfies Formula<Inputs>;
