import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { besselJ0, besselJ1 } from './bessel.ts';
import { requireCone } from './require.ts';

/** What a place in the Airy pattern depends on. */
export type InAiryPattern = Named<'image-radius' | 'wavelength' | 'effective-f-number'>;

/**
 * How bright the image of a point is, out from its middle, for a perfect lens in focus.
 *
 * (2 J1(v)/v)² with v = π r/(λ N_w)
 *
 * @param given.imageRadius *r*, on the sensor from the middle of the image, mm; 0 or above
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @returns the intensity relative to the middle, 0 to 1. Linear light: a screen needs its display curve on top.
 * @throws OutOfRange for a radius below zero, the others not above zero, or anything not finite
 *
 * Assumes a circular pupil evenly lit, one wavelength and a slender cone.
 * Source: Born & Wolf, Principles of Optics, 8.5.2 eq. (14) (from memory). Derived in [README](README.md#airy).
 *
 * @example airyIntensity({ imageRadius: 0.0044, wavelength: 0.00055, effectiveFNumber: 16 }) // 0.520855
 */
export function airyIntensity(given: InAiryPattern): number {
  const v = opticalRadius(given);
  // Below 1e-9 the series 1 − v²/4 is 1 to every digit, and the quotient would be 0/0 at the middle.
  return v < 1e-9 ? 1 : ((2 * besselJ1(v)) / v) ** 2;
}

/**
 * The share of a point's light that falls within a circle about the middle of its image, for a perfect lens in focus.
 *
 * 1 − J0(v)² − J1(v)² with v = π r/(λ N_w)
 *
 * @param given.imageRadius *r*, of the circle on the sensor, mm; 0 or above
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @returns the share, 0 at the middle, towards 1 far out, 0.8378 within the first dark ring
 * @throws OutOfRange for a radius below zero, the others not above zero, or anything not finite
 *
 * Assumes what {@link airyIntensity} assumes.
 * Source: Born & Wolf, Principles of Optics, 8.5.2 eq. (18), after Lord Rayleigh, 1881 (from memory).
 *
 * @example encircledEnergy({ imageRadius: 0.0107331, wavelength: 0.00055, effectiveFNumber: 16 }) // 0.837785
 */
export function encircledEnergy(given: InAiryPattern): number {
  const v = opticalRadius(given);
  return Math.max(0, 1 - besselJ0(v) ** 2 - besselJ1(v) ** 2);
}

/** v = π r/(λ N_w): the radius in the pure number in which every circular pupil's pattern is the same. Throws OutOfRange as {@link encircledEnergy}. */
export function opticalRadius({ imageRadius, wavelength, effectiveFNumber }: InAiryPattern): number {
  requireNotNegative('image-radius', imageRadius);
  requirePositive('wavelength', wavelength);
  requireCone(effectiveFNumber);
  const v = (Math.PI * imageRadius) / (wavelength * effectiveFNumber);
  if (!Number.isFinite(v)) throw new OutOfRange('image-radius', imageRadius, 'a radius that compares with λ N_w');
  return v;
}
