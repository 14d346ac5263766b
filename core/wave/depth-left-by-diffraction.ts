import { requireCone, type Cone } from '#core/depth/cone.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * The depth that one frame holds at an f-number, defocus and diffraction together, through any chain.
 *
 * T with √(c² − (λ N_w)²) in the place of c: b² + (λ N_w)² ≤ c² at both ends
 *
 * @param cone of the chain; a solved rig will do
 * @param given.circleOfConfusion *c*, the largest blur still called sharp, mm on the sensor; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @returns mm, both sides together; 0 where diffraction alone blurs as wide as *c*, from N_w = c/λ on; `Infinity` where there is no far end.
 *   The most is c²/(λ m²), at N_w = c/(√2 λ): `subjectDepthInOneFrame` and `finestEffectiveFNumber`
 * @throws OutOfRange for what must be above zero and is not, or anything not finite
 *
 * Assumes what `effectiveFNumberForDepth` does, whose inverse it is for a telecentric chain. A rule, not a law.
 * Source: derived in core/depth/README.md#one-frame.
 *
 * @example depthLeftByDiffraction({ magnification: 1, effectiveFNumber: 16, inverseEntrancePupilDistance: 0 }, { circleOfConfusion: 0.02, wavelength: 0.00055 }) // 0.575
 */
export function depthLeftByDiffraction(
  cone: Cone,
  { circleOfConfusion, wavelength }: Readonly<Named<'circle-of-confusion' | 'wavelength'>>,
): number {
  const narrow = requireCone(cone);
  const circle = requirePositive('circle-of-confusion', circleOfConfusion);
  const spread = requirePositive('wavelength', wavelength) * narrow.effectiveFNumber;
  // Factors, for a difference of squares loses figures near the limit.
  const left = Math.sqrt(Math.max(0, (circle - spread) * (circle + spread)));
  return left > 0 ? depthOfFieldOfCone({ ...narrow, circleOfConfusion: left }) : 0;
}
