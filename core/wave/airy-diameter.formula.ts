import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireCone } from './require.ts';

type Inputs = 'wavelength' | 'effective-f-number';

/**
 * Radius of the first dark ring in units of λ N_w: the first zero of the Bessel function J1, 3.8317059702075123…, over π.
 * Zero: NIST Digital Library of Mathematical Functions, 10.21. Often printed as 1.22.
 */
export const firstDarkRing = 1.2196698912665045;

/**
 * The diameter on the sensor of the Airy disc: the bright middle that a perfect lens makes of a point in focus,
 * measured to the first dark ring.
 *
 * d = 2 × 1.21966989… λ N_w
 *
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @returns the diameter, mm. Not the width at half height (1.03 λ N_w), and not the marked f-number's disc close up.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a circular pupil evenly lit, one wavelength and a slender cone (N_w above about 1).
 * Source: Born & Wolf, Principles of Optics, 8.5.2 (from memory). Derived in [README](README.md#airy).
 *
 * @example airyDiameter({ wavelength: 0.00055, effectiveFNumber: 16 }) // 0.0214662, so 21.5 µm
 */
export function airyDiameter({ wavelength, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('wavelength', wavelength);
  requireCone(effectiveFNumber);
  return 2 * firstDarkRing * wavelength * effectiveFNumber;
}

export const airyDiameterFormula = {
  gives: 'airy-diameter',
  from: ['wavelength', 'effective-f-number'],
  tex: String.raw`\q{airy-diameter} = 2 \times 1.2196698913\,\q{wavelength}\,\q{effective-f-number}`,
  constant: { value: firstDarkRing, power: 1 },
  evaluate: airyDiameter,
  says: 'Even a perfect lens spreads a point into a disc, and the disc grows with the effective f-number.',
  source: 'Born & Wolf, Principles of Optics, 8.5.2 (from memory)',
  checkedBy: ['best-f-number-table', 'diffraction-openstax'],
} as const satisfies Formula<Inputs>;
