import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { requireCone, type Cone } from './cone.ts';

/** A place off the sharp plane: *δ*, mm, negative towards the lens. */
interface Offset {
  readonly offset: number;
}

/**
 * Diameter on the sensor of the blur of a point out of focus, through any chain. Exact.
 *
 * b = m² |δ| / (N_w |1 + δ/u|)
 *
 * @param point *m*, *N_w* and *1/u* as in {@link Cone}, and *δ*, mm from the sharp plane, negative towards the lens
 * @returns *b*, mm; 0 in the sharp plane, m² |δ|/N_w on either side through a telecentric chain. Behind a pupil that lies behind
 *   the subject it falls again, towards m times the pupil's width.
 * @throws OutOfRange for what lies outside, for a point at the entrance pupil, and for one behind a pupil that lies in front of
 *   the subject: it would have to shine away from it
 *
 * Assumes geometrical optics; waves add to it once it is of the size of the Airy disc.
 * Source: derived in [README](README.md#any-chain).
 *
 * @example defocusBlurOfCone({ magnification: 1, effectiveFNumber: 20, inverseEntrancePupilDistance: 0.01, offset: -20 }) // 1.25
 */
export function defocusBlurOfCone(point: Cone & Offset): number {
  const { magnification, effectiveFNumber } = requireCone(point);
  return (magnification ** 2 * Math.abs(point.offset)) / (effectiveFNumber * Math.abs(stretchAt(point)));
}

/**
 * The effective f-number with which a point out of focus is blurred by just so much, the pupil staying in its place. Exact.
 *
 * N_w = m² |δ| / (b |1 + δ/u|)
 *
 * @param point *m*, *1/u* and *δ* as for {@link defocusBlurOfCone}; *δ* not 0, for in the sharp plane every cone is as good
 * @param point.defocusBlur *b*, diameter on the sensor, mm, above 0; with the circle of confusion the point is a limit of the depth of field
 * @returns *N_w*, of the cone that reaches the sensor, not as marked
 * @throws OutOfRange as {@link defocusBlurOfCone} does, and for a point in the sharp plane
 *
 * Derived in [README](README.md#any-chain).
 *
 * @example effectiveFNumberForBlur({ magnification: 1, inverseEntrancePupilDistance: 0.01, offset: -20, defocusBlur: 1.25 }) // 20
 */
export function effectiveFNumberForBlur(
  point: Omit<Cone, 'effectiveFNumber'> & Offset & Readonly<Named<'defocus-blur'>>,
): number {
  requirePositive('defocus-blur', point.defocusBlur);
  const widest = defocusBlurOfCone({ ...point, effectiveFNumber: 1 });
  return requirePositive('effective-f-number', widest / point.defocusBlur);
}

/**
 * How large the picture shows what lies off the sharp plane, through any chain: perspective, seen from the entrance pupil.
 *
 * m / (1 + δ/u)
 *
 * @param point *m*, *1/u* and *δ* as for {@link defocusBlurOfCone}
 * @returns image over subject size, from middle to middle of the blurs: *m* at every depth through a telecentric chain; more behind the
 *   plane than in front of it where the pupil lies behind the subject, and below 0, turned over, from behind that pupil on
 * @throws OutOfRange as {@link defocusBlurOfCone} does
 *
 * Assumes a sensor square to the axis and the chain left focused on the sharp plane.
 * Source: similar triangles at the entrance pupil. Derived in [README](README.md#any-chain).
 *
 * @example magnificationOffPlaneOfCone({ magnification: 1, inverseEntrancePupilDistance: 0.01, offset: 25 }) // 0.8
 */
export function magnificationOffPlaneOfCone(point: Omit<Cone, 'effectiveFNumber'> & Offset): number {
  return requirePositive('magnification', point.magnification) / stretchAt(point);
}

/**
 * How much of the background a picture shows from side to side, through any chain.
 *
 * background width = field width × |1 + B/u|
 *
 * @param given.fieldWidth of the sharp plane, mm, above 0
 * @param given.inverseEntrancePupilDistance *1/u*, 1/mm, of either sign
 * @param given.backgroundDistance *B*, from the sharp plane away from the lens, mm, 0 or above
 * @returns mm in the plane of the background: the field's own width through a telecentric chain; 0 at a pupil behind the subject, where all
 *   rays through its middle cross
 * @throws OutOfRange for what lies outside
 *
 * Source: similar triangles at the entrance pupil. Derived in [README](README.md#any-chain).
 *
 * @example backgroundWidthOfCone({ fieldWidth: 36, inverseEntrancePupilDistance: -0.01, backgroundDistance: 50 }) // 18
 */
export function backgroundWidthOfCone(
  given: Readonly<Named<'field-width' | 'inverse-entrance-pupil-distance' | 'background-distance'>>,
): number {
  const inverse = requireFinite('inverse-entrance-pupil-distance', given.inverseEntrancePupilDistance);
  const stretch = 1 + inverse * requireNotNegative('background-distance', given.backgroundDistance);
  return requirePositive('field-width', given.fieldWidth) * Math.abs(stretch);
}

/** 1 + δ/u: how many times as far from the entrance pupil as the sharp plane a place is. */
function stretchAt({
  inverseEntrancePupilDistance,
  offset,
}: Omit<Cone & Offset, 'magnification' | 'effectiveFNumber'>) {
  const inverse = requireFinite('inverse-entrance-pupil-distance', inverseEntrancePupilDistance);
  const stretch = 1 + offset * inverse;
  if (Number.isFinite(offset) && (stretch > 0 || (inverse < 0 && stretch < 0))) return stretch;
  const accepted = 'that of a point a finite way off whose light comes to the pupil from the subject’s side';
  throw new OutOfRange('entrance-pupil-distance', 1 / inverse + offset, accepted);
}
