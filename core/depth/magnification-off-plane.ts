import { requirePositive } from '#core/quantity/errors.ts';
import type { PointOffPlane } from './defocus-blur.ts';

/**
 * How large the picture shows what lies at some distance from the sharp plane: perspective, seen from the entrance pupil.
 *
 * m u / (u + δ)
 *
 * @param point *m* in the sharp plane, *u* and *δ* (negative towards the lens) as in {@link PointOffPlane}
 * @returns image over subject size, from middle to middle of the blurs. Not the *m* of a lens focused there, whose sensor would have moved.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a point at or behind the entrance
 *   pupil, named by the distance it would have from there
 *
 * Assumes a sensor square to the axis and the lens left focused on the sharp plane.
 * Source: similar triangles at the entrance pupil. See [README](README.md#blur).
 *
 * @example magnificationOffPlane({ magnification: 1, entrancePupilDistance: 100, offset: 25 }) // 0.8
 */
export function magnificationOffPlane(point: Omit<PointOffPlane, 'entrancePupil'>): number {
  const { magnification, entrancePupilDistance, offset } = point;
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  const distance = requirePositive('entrance-pupil-distance', entrancePupilDistance + offset);
  return (magnification * entrancePupilDistance) / distance;
}
