import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification';

/**
 * How far the sensor stands behind the rear principal plane H′ at a given magnification.
 *
 * s' = f (1 + m)
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.magnification *m*, image over subject size, 0 or above: 0 far away
 * @returns *s'*, mm, from H′. Not the distance from the mount or from the rear glass, which no formula knows.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian optics in air.
 * Source: US Army Subcourse SS0511, p. 106. Derived in [README](README.md#conjugates).
 *
 * @example imageDistance({ focalLength: 50, magnification: 0.5 }) // 75
 */
export function imageDistance({ focalLength, magnification }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requireNotNegative('magnification', magnification);
  return focalLength * (1 + magnification);
}

export const imageDistanceFormula = {
  gives: 'image-distance',
  from: ['focal-length', 'magnification'],
  tex: String.raw`\q{image-distance} = \q{focal-length}\left(1 + \q{magnification}\right)`,
  evaluate: imageDistance,
  says: 'Every unit of magnification takes one more focal length between lens and sensor.',
  source: 'US Army Subcourse SS0511, p. 106',
  checkedBy: ['conjugates-in-manuals', 'enlarging-tables'],
} as const satisfies Formula<Inputs>;
