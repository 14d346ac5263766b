import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification' | 'principal-separation';

/**
 * Sensor to subject: what a lens's distance scale and its closest focus are measured by.
 *
 * L = f (2 + m + 1/m) + HH'
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.principalSeparation *HH'*, from H to H′, mm, negative where they cross over
 * @returns *L*, mm, above 0. Neither the subject distance (from H) nor the working distance (from the front of the lens).
 * @throws OutOfRange for a focal length or magnification not above zero, and for a separation so negative that the
 *   subject would have to stand behind the sensor
 *
 * Assumes Gaussian optics in air.
 * Source: sum of the conjugate distances and HH', derived in [README](README.md#distances).
 *
 * @example focusDistance({ focalLength: 50, magnification: 1, principalSeparation: 0 }) // 200
 */
export function focusDistance({ focalLength, magnification, principalSeparation }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  requireFinite('principal-separation', principalSeparation);
  const conjugates = focalLength * (2 + magnification + 1 / magnification);
  if (conjugates + principalSeparation <= 0) {
    throw new OutOfRange(
      'principal-separation',
      principalSeparation,
      `above ${-conjugates}, or the subject is behind the sensor`,
    );
  }
  return conjugates + principalSeparation;
}

export const focusDistanceFormula = {
  gives: 'focus-distance',
  from: ['focal-length', 'magnification', 'principal-separation'],
  tex: String.raw`\q{focus-distance} = \q{focal-length}\left(2 + \q{magnification} + \frac{1}{\q{magnification}}\right) + \q{principal-separation}`,
  evaluate: focusDistance,
  says: 'The distance on the lens barrel counts from the sensor: subject distance, image distance and the gap between the principal planes.',
  source: 'sum of the conjugate distances and HH′, derived in core/gaussian/README.md#distances',
  checkedBy: ['common-practice', 'focusing-in-textbooks', 'pupils-in-matrices'],
  // A short lens whose principal planes cross over widely would need its subject behind the sensor.
  sample: { 'focal-length': [30, 800] },
} as const satisfies Formula<Inputs>;
