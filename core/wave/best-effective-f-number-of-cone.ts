import type { Cone } from '#core/depth/cone.ts';
import { balancedFocus } from '#core/depth/balanced-focus.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { firstDarkRing } from './airy-diameter.formula.ts';

/**
 * The effective f-number at which the ends of a deep subject, equally blurred, blur as much by defocus as everything does by diffraction,
 * through any chain.
 *
 * N_w = m √(Z_e/(2 × 1.21966989… λ)), Z_e = Z/(1 + √(1 + (Z/u)²))
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.inverseEntrancePupilDistance *1/u*, 1/mm, of either sign
 * @param given.subjectDepth *Z*, nearest to farthest part that should be sharp, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @returns *N_w*, of the cone that reaches the sensor, the sharp plane where `balancedFocus` puts it. As `bestEffectiveFNumber` while Z is small
 *   beside u; less for deeper subjects.
 * @throws OutOfRange for what lies outside
 *
 * Source: derived in [README](README.md#best).
 *
 * @example bestEffectiveFNumberOfCone({ magnification: 1, inverseEntrancePupilDistance: 0, subjectDepth: 2, wavelength: 0.00055 }) // 27.3
 */
export function bestEffectiveFNumberOfCone(
  given: Omit<Cone, 'effectiveFNumber'> & Readonly<Named<'subject-depth' | 'wavelength'>>,
): number {
  const { evenDepth } = balancedFocus(given);
  const wavelength = requirePositive('wavelength', given.wavelength);
  return (
    requirePositive('magnification', given.magnification) * Math.sqrt(evenDepth / (2 * firstDarkRing * wavelength))
  );
}
