import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * The two magnifications with which a lens, moved between sensor and subject, makes a sharp picture of it: Bessel's two places.
 *
 * m + 1/m = (L − HH')/f − 2
 *
 * @param given.focusDistance *L*, sensor to subject, mm; 4 f + HH' or above
 * @param given.focalLength *f*, mm, above 0
 * @param given.principalSeparation *HH'*, mm; of either sign
 * @returns the one up to life size, then its inverse; both are 1 at the nearest distance
 * @throws OutOfRange for a distance at which no place of the lens makes a picture sharp, and for anything not finite
 *
 * Assumes Gaussian optics in air.
 * Source: the focus distance solved for m; see [README](README.md#distances).
 *
 * @example magnificationsAtFocusDistance({ focusDistance: 225, focalLength: 50, principalSeparation: 0 }) // [0.5, 2]
 */
export function magnificationsAtFocusDistance({
  focusDistance,
  focalLength,
  principalSeparation,
}: Named<'focus-distance' | 'focal-length' | 'principal-separation'>): readonly [number, number] {
  requirePositive('focal-length', focalLength);
  requireFinite('principal-separation', principalSeparation);
  const nearest = 4 * focalLength + principalSeparation;
  if (!(focusDistance >= nearest && focusDistance < Infinity)) {
    throw new OutOfRange(
      'focus-distance',
      focusDistance,
      `at least ${nearest}, the nearest at which a picture is sharp`,
    );
  }
  const half = (focusDistance - principalSeparation) / (2 * focalLength) - 1;
  const larger = half + Math.sqrt(Math.max(0, half * half - 1));
  return [1 / larger, larger];
}
