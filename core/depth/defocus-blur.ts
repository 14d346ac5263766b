import { requirePositive } from '#core/quantity/errors.ts';

/** A point near the sharp plane, as a lens focused on that plane sees it. */
export interface PointOffPlane {
  /** *m*, in the sharp plane, above 0 */
  readonly magnification: number;
  /** *D*, diameter, mm, above 0 */
  readonly entrancePupil: number;
  /** *u*, entrance pupil to sharp plane, mm, above 0 */
  readonly entrancePupilDistance: number;
  /** *δ*, from the sharp plane to the point, mm; negative towards the lens, no farther than the entrance pupil */
  readonly offset: number;
}

/**
 * Diameter on the sensor of the blur of a point out of focus. Exact.
 *
 * b = m D |δ| / (u + δ)
 *
 * @param point see {@link PointOffPlane}
 * @returns *b*, mm; 0 in the sharp plane. At the near and at the far limit it is the circle of confusion.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a point at or behind the
 *   entrance pupil, named by the distance it would have from there
 *
 * Assumes geometrical optics; waves add to it once it is of the size of the Airy disc.
 * Source: derived in [README](README.md#blur).
 *
 * @example defocusBlur({ magnification: 1, entrancePupil: 5, entrancePupilDistance: 100, offset: -20 }) // 1.25
 */
export function defocusBlur({ magnification, entrancePupil, entrancePupilDistance, offset }: PointOffPlane): number {
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil', entrancePupil);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  const distance = requirePositive('entrance-pupil-distance', entrancePupilDistance + offset);
  return (magnification * entrancePupil * Math.abs(offset)) / distance;
}
