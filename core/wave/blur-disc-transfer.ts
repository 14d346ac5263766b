import { OutOfRange, requireNotNegative } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { besselJ1 } from './bessel.ts';

/**
 * What an evenly bright blur disc makes of a fine pattern: defocus by geometry alone, for comparison with `opticalTransfer`.
 *
 * 2 J1(a)/a with a = π b ν
 *
 * @param given.defocusBlur *b*, diameter on the sensor, mm; 0 or above
 * @param given.spatialFrequency *ν*, line pairs per millimetre on the sensor; 0 or above
 * @returns from 1 down to −0.132; below zero light and dark have changed places. Knows no cutoff: trust it only for
 *   blurs of several Airy discs and patterns far coarser than the cutoff.
 * @throws OutOfRange for anything below zero or not finite
 *
 * Source: Goodman, Introduction to Fourier Optics, ch. 6 (from memory). See [README](README.md#geometry).
 *
 * @example blurDiscTransfer({ defocusBlur: 0.02, spatialFrequency: 25 }) // 0.721703
 */
export function blurDiscTransfer({
  defocusBlur,
  spatialFrequency,
}: Named<'defocus-blur' | 'spatial-frequency'>): number {
  requireNotNegative('defocus-blur', defocusBlur);
  requireNotNegative('spatial-frequency', spatialFrequency);
  const a = Math.PI * defocusBlur * spatialFrequency;
  if (!Number.isFinite(a)) throw new OutOfRange('defocus-blur', defocusBlur, 'a blur that compares with the pattern');
  return a < 1e-9 ? 1 : (2 * besselJ1(a)) / a;
}
