import { requireCount } from '#core/quantity/count.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { besselJ0, besselJ1 } from './bessel.ts';
import { requireCone } from './require.ts';

/** Radii on the sensor, mm, from the innermost ring outwards. */
export interface AiryRings {
  /** Where no light falls at all; the first bounds the Airy disc. */
  readonly dark: readonly number[];
  /** Where each ring is brightest; the disc itself, brightest in the middle, is not among them. */
  readonly bright: readonly number[];
}

/**
 * The radii of the dark and of the bright rings about the image of a point, for a perfect lens in focus.
 *
 * r = λ N_w z/π with z the zeros of J1 (dark) and of J2 (bright)
 *
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param count how many of each; a whole number, 0 or above
 * @returns both lists, mm. Not equally spaced: the first dark ring lies at 1.22 λ N_w, the spacing tends to λ N_w.
 * @throws OutOfRange for a wavelength or an f-number not finite and above zero; RangeError for a count that is no count
 *
 * Assumes a circular pupil evenly lit, one wavelength and a slender cone.
 * Source: NIST Digital Library of Mathematical Functions, 10.21.19 (first guess), then Newton's rule. See [README](README.md#airy).
 *
 * @example airyRings({ wavelength: 0.00055, effectiveFNumber: 16 }, 1).dark // [0.0107331]
 */
export function airyRings(given: Named<'wavelength' | 'effective-f-number'>, count: number): AiryRings {
  requirePositive('wavelength', given.wavelength);
  requireCone(given.effectiveFNumber);
  requireCount('rings', count, 0, 1000);
  const unit = (given.wavelength * given.effectiveFNumber) / Math.PI;
  const radii = (order: 1 | 2) => Array.from({ length: count }, (_, k) => unit * besselZero(order, k + 1));
  return { dark: radii(1), bright: radii(2) };
}

/** The *k*-th positive zero of J1 or J2. */
function besselZero(order: 1 | 2, k: number): number {
  const beta = (k + order / 2 - 0.25) * Math.PI;
  let z = beta - (4 * order * order - 1) / (8 * beta);
  // The guess is good to 0.03 or better; each round squares the error, so four leave rounding alone.
  for (let round = 0; round < 4; round++) {
    const [j0, j1] = [besselJ0(z), besselJ1(z)];
    const j2 = (2 * j1) / z - j0;
    z -= order === 1 ? j1 / (j0 - j1 / z) : j2 / (j1 - (2 * j2) / z);
  }
  return z;
}
