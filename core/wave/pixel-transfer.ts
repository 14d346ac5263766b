import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * What square pixels that touch make of a fine pattern before they sample it: each averages over its own area.
 *
 * sin(π ν p)/(π ν p)
 *
 * @param given.spatialFrequency *ν*, along the rows or columns, line pairs per millimetre on the sensor; 0 or above
 * @param given.pixelPitch *p*, centre to centre of neighbouring pixels, mm; above 0
 * @returns 1 at zero frequency, 2/π = 0.637 at the Nyquist frequency, 0 at 1/p, below zero beyond. Multiplies the lens's
 *   transfer; says nothing of the false patterns that sampling adds beyond the Nyquist frequency.
 * @throws OutOfRange for a frequency below zero, a pitch not above zero, or anything not finite
 *
 * Assumes pixels sensitive over their whole square, no filter before them and no colour mosaic.
 * Source: Boreman, Modulation Transfer Function in Optical and Electro-Optical Systems, ch. 2 (from memory). See [README](README.md#sampling).
 *
 * @example pixelTransfer({ spatialFrequency: 125, pixelPitch: 0.004 }) // 0.636620
 */
export function pixelTransfer({ spatialFrequency, pixelPitch }: Named<'spatial-frequency' | 'pixel-pitch'>): number {
  requireNotNegative('spatial-frequency', spatialFrequency);
  requirePositive('pixel-pitch', pixelPitch);
  const a = Math.PI * spatialFrequency * pixelPitch;
  if (!Number.isFinite(a))
    throw new OutOfRange('spatial-frequency', spatialFrequency, 'a pattern that compares with the pitch');
  return a < 1e-9 ? 1 : Math.sin(a) / a;
}
