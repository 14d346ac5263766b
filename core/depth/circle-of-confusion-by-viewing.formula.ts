import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'viewing-distance' | 'print-width' | 'sensor-width';

/** One arcminute, π/10800 = 0.0002908882086657216 rad: the gap that an eye of acuity 1.0 just sees. */
export const arcminute = Math.PI / 10800;

/**
 * The largest blur on the sensor that a viewer of the print still takes for a point.
 *
 * c = viewing distance × 1 arcminute × W_x / print width
 *
 * @param given.viewingDistance eye to print, mm, above 0
 * @param given.printWidth of the whole, uncropped picture, mm, above 0
 * @param given.sensorWidth *W_x*, mm, above 0
 * @returns *c*, mm on the sensor. The arcminute is taken as one line, the gap in a test ring, not as a pair of a dark and a
 *   bright line; whoever takes it as the pair wants half of this. Nor is it the 0.03 mm of old tables, which allow the eye
 *   about three arcminutes.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes an eye of acuity 1.0 and takes the small angle for its tangent (3 parts in 10⁸).
 * Source: acuity 1.0 is a gap of one arcminute: ISO 8596 (from memory). Derived in [README](README.md#circle-of-confusion).
 *
 * @example circleOfConfusionByViewing({ viewingDistance: 300, printWidth: 300, sensorWidth: 36 }) // 0.01047...
 */
export function circleOfConfusionByViewing({ viewingDistance, printWidth, sensorWidth }: Named<Inputs>): number {
  requirePositive('viewing-distance', viewingDistance);
  requirePositive('print-width', printWidth);
  requirePositive('sensor-width', sensorWidth);
  return (viewingDistance * arcminute * sensorWidth) / printWidth;
}

export const circleOfConfusionByViewingFormula = {
  gives: 'circle-of-confusion',
  from: ['viewing-distance', 'print-width', 'sensor-width'],
  tex: String.raw`\q{circle-of-confusion} = \q{viewing-distance} \cdot \frac{\pi}{10800} \cdot \frac{\q{sensor-width}}{\q{print-width}}`,
  evaluate: circleOfConfusionByViewing,
  says: 'The finest line the eye can see on the print, one arcminute wide, scaled down to the sensor.',
  source: 'ISO 8596 for the arcminute (from memory); derived in core/depth/README.md#circle-of-confusion',
  checkedBy: ['viewing-acuity'],
} as const satisfies Formula<Inputs>;
