import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'spatial-frequency' | 'cutoff-frequency';

/**
 * The share of a fine pattern's contrast that a perfect lens in focus passes on: the MTF of a circular pupil.
 *
 * (2/π) (arccos s − s √(1 − s²)) with s = ν/ν_c
 *
 * @param given.spatialFrequency *ν*, line pairs per millimetre on the sensor; 0 or above
 * @param given.cutoffFrequency *ν_c*, line pairs per millimetre on the sensor; above 0
 * @returns the contrast left, 1 at zero frequency, 0 at the cutoff and beyond it. Not what the pixels make of it.
 * @throws OutOfRange for a frequency below zero, a cutoff not above zero, or anything not finite
 *
 * Assumes a sine pattern, incoherent light, one wavelength, no aberration and perfect focus: an upper bound for any lens.
 * Source: Goodman, Introduction to Fourier Optics, ch. 6 (from memory). Derived in [README](README.md#mtf).
 *
 * @example contrast({ spatialFrequency: 50, cutoffFrequency: 100 }) // 0.391002
 */
export function contrast({ spatialFrequency, cutoffFrequency }: Named<Inputs>): number {
  requireNotNegative('spatial-frequency', spatialFrequency);
  requirePositive('cutoff-frequency', cutoffFrequency);
  const s = spatialFrequency / cutoffFrequency;
  // Not only an answer beyond the cutoff: at s just below 1 rounding alone could take the difference below zero.
  return s < 1 ? Math.max(0, (2 / Math.PI) * (Math.acos(s) - s * Math.sqrt((1 - s) * (1 + s)))) : 0;
}

export const contrastFormula = {
  gives: 'contrast',
  from: ['spatial-frequency', 'cutoff-frequency'],
  // The same with s = cos θ, where s √(1 − s²) is half the sine of 2θ: narrow enough for a column of text with numbers in it.
  tex: String.raw`\q{contrast} = \frac{1}{\pi}\left(2\arccos\frac{\q{spatial-frequency}}{\q{cutoff-frequency}} - \sin\left(2\arccos\frac{\q{spatial-frequency}}{\q{cutoff-frequency}}\right)\right)`,
  evaluate: contrast,
  says: 'Contrast falls steadily, from all of it in coarse patterns to none at the cutoff; halfway 39 % is left.',
  source: 'Goodman, Introduction to Fourier Optics, ch. 6 (from memory)',
  checkedBy: ['diffraction-mtf'],
  // Above the cutoff the arc cosine has no real value; the function answers 0 there.
  holds: ({ spatialFrequency, cutoffFrequency }) => spatialFrequency <= cutoffFrequency,
  sample: { 'spatial-frequency': [1, 100], 'cutoff-frequency': [101, 5000] },
} as const satisfies Formula<Inputs>;
