import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'refractive-index' | 'depth-of-field';

/**
 * The depth of field in a clear medium behind a flat wall, from that of the same chain in air: a subject in a tank.
 *
 * depth in the medium = n_r T
 *
 * @param given.refractiveIndex *n_r*, of the medium, 1 or above: 1.33 for water
 * @param given.depthOfField *T*, in air, at the same *m* and *N_w*, mm, above 0 and finite
 * @returns mm in the medium. Near limit, far limit, focus steps and the depth that waves allow grow by the same factor.
 * @throws OutOfRange for an index below 1, a depth not above zero, or anything not finite
 *
 * Assumes a flat wall square to the axis and a slender cone: where NA nears 0.3 the wall itself blurs.
 * Source: depths behind a flat face seem shorter by n_r, so that more of them fits; Murphy, Fundamentals of Light Microscopy and Electronic
 * Imaging, p. 90, has n λ/NA² for waves. Derived in [README](README.md#in-water).
 *
 * @example depthOfFieldInMedium({ refractiveIndex: 1.33, depthOfField: 0.8 }) // 1.064
 */
export function depthOfFieldInMedium({ refractiveIndex, depthOfField }: Named<Inputs>): number {
  if (!(refractiveIndex >= 1 && refractiveIndex < Infinity)) {
    throw new OutOfRange('refractive-index', refractiveIndex, 'a finite number, 1 or above');
  }
  return refractiveIndex * requirePositive('depth-of-field', depthOfField);
}

export const depthOfFieldInMediumFormula = {
  gives: 'depth-of-field-in-medium',
  from: ['refractive-index', 'depth-of-field'],
  tex: String.raw`\q{depth-of-field-in-medium} = \q{refractive-index}\,\q{depth-of-field}`,
  evaluate: depthOfFieldInMedium,
  says: 'Water squeezes what lies behind its surface, so a third more of it is sharp.',
  source: 'derived in core/depth/README.md#in-water',
  checkedBy: ['angles-tanks-and-lights', 'cones-tanks-and-queues'],
} as const satisfies Formula<Inputs>;
