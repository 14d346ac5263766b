import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { magnificationsAtFocusDistance } from './magnifications-at-focus-distance.ts';

type Inputs = 'focal-length' | 'focus-distance' | 'principal-separation';

/**
 * The magnification that a lens moved as a whole gives at a distance on its scale: of the two places that are sharp the one nearer to the sensor.
 *
 * m = (1 − r)/(1 + r) with r = √(1 − 4f/(L − HH'))
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.focusDistance *L*, sensor to subject, mm; 4 f + HH' or above
 * @param given.principalSeparation *HH'*, mm; of either sign
 * @returns *m*, up to 1. The other place gives 1/*m*: a lens on its own thread does not get there.
 * @throws OutOfRange for a distance at which no place of the lens makes a picture sharp, a focal length not above zero, and anything not finite
 *
 * Holds for a lens that keeps *f*; with internal focusing it gives too much.
 * Source: L = f (2 + m + 1/m) + HH' solved for m. See [README](README.md#distances).
 *
 * @example magnificationAtFocusDistance({ focalLength: 50, focusDistance: 225, principalSeparation: 0 }) // 0.5
 */
export function magnificationAtFocusDistance(given: Named<Inputs>): number {
  requirePositive('focus-distance', given.focusDistance);
  return magnificationsAtFocusDistance(given)[0];
}

export const magnificationAtFocusDistanceFormula = {
  gives: 'magnification',
  from: ['focal-length', 'focus-distance', 'principal-separation'],
  tex: String.raw`\q{magnification} = \frac{1 - \sqrt{1 - \frac{4\,\q{focal-length}}{\q{focus-distance} - \q{principal-separation}}}}{1 + \sqrt{1 - \frac{4\,\q{focal-length}}{\q{focus-distance} - \q{principal-separation}}}}`,
  evaluate: magnificationAtFocusDistance,
  says: 'How large a thing is follows from the distance on the ring, as long as the lens moves as a whole.',
  source: 'the distance from sensor to subject, solved for the magnification',
  checkedBy: ['marks-in-matrices'],
  // Nearer than 4 f + HH' nothing is sharp.
  sample: { 'focal-length': [4, 100], 'focus-distance': [600, 50000] },
} as const satisfies Formula<Inputs>;
