import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'principal-separation';

/**
 * The shortest distance from sensor to subject at which a lens moved as a whole can give a sharp image.
 *
 * L = 4 f + HH', reached at life size
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.principalSeparation *HH'*, from H to H′, mm, negative where they cross over
 * @returns *L*, mm, above 0. A floor, not what a given lens reaches: its helicoid usually ends long before.
 * @throws OutOfRange for a focal length not above zero, and for a separation so negative that nothing is left
 *
 * Assumes Gaussian optics in air and a lens that keeps *f* and *HH'* while focusing: internal focusing goes below this floor
 * by shortening *f*.
 * Source: least value of L = f (2 + m + 1/m) + HH', derived in [README](README.md#nearest-focus).
 *
 * @example nearestFocusDistance({ focalLength: 50, principalSeparation: 0 }) // 200
 */
export function nearestFocusDistance({ focalLength, principalSeparation }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requireFinite('principal-separation', principalSeparation);
  const nearest = 4 * focalLength + principalSeparation;
  if (nearest <= 0) {
    throw new OutOfRange(
      'principal-separation',
      principalSeparation,
      `above ${-4 * focalLength}, or the subject is behind the sensor`,
    );
  }
  return nearest;
}

export const nearestFocusDistanceFormula = {
  gives: 'focus-distance',
  from: ['focal-length', 'principal-separation'],
  tex: String.raw`\q{focus-distance} = 4\,\q{focal-length} + \q{principal-separation}`,
  evaluate: nearestFocusDistance,
  says: 'No lens that moves as a whole focuses nearer than four focal lengths from the sensor, give or take HH′.',
  source: 'least value of the focus distance over m, derived in core/gaussian/README.md#nearest-focus',
  checkedBy: ['common-practice', 'focusing-in-textbooks', 'pupils-in-matrices'],
  // A short lens whose principal planes cross over widely would need its subject behind the sensor.
  sample: { 'focal-length': [30, 800] },
} as const satisfies Formula<Inputs>;
