import { requirePositive } from '#core/quantity/errors.ts';
import type { PointOffPlane } from './defocus-blur.ts';

/**
 * The entrance pupil with which a point out of focus is blurred by just so much. Exact.
 *
 * D = b (u + δ) / (m |δ|)
 *
 * @param point *m*, *u* and *δ* as in {@link PointOffPlane}; *δ* not 0, for in the sharp plane every pupil is as good
 * @param point.defocusBlur *b*, diameter on the sensor, mm, above 0; with the circle of confusion the point is the limit of the
 *   depth of field
 * @returns *D*, mm. A wider pupil blurs more. With N = f/D it is the aperture to set.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a point in the sharp plane or at or
 *   behind the entrance pupil, named by its blur or its distance
 *
 * Assumes geometrical optics, as {@link defocusBlur} does, whose inverse it is.
 * Source: derived in [README](README.md#blur).
 *
 * @example entrancePupilForBlur({ magnification: 1, entrancePupilDistance: 100, offset: -20, defocusBlur: 1.25 }) // 5
 */
export function entrancePupilForBlur(point: Omit<PointOffPlane, 'entrancePupil'> & { defocusBlur: number }): number {
  const { magnification, entrancePupilDistance, offset, defocusBlur } = point;
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  requirePositive('defocus-blur', defocusBlur);
  const distance = requirePositive('entrance-pupil-distance', entrancePupilDistance + offset);
  const widening = requirePositive('defocus-blur', (magnification * Math.abs(offset)) / distance);
  return defocusBlur / widening;
}
