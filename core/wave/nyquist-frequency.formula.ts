import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'pixel-pitch';

/**
 * The finest pattern that the pixels can sample: one line pair on two pixels.
 *
 * ν = 1/(2p)
 *
 * @param given.pixelPitch *p*, centre to centre of neighbouring pixels, mm; above 0
 * @returns the Nyquist frequency, line pairs per millimetre on the sensor. Not a cutoff: finer patterns still reach the pixels
 *   and come back as false, coarser ones.
 * @throws OutOfRange for a pitch that is not finite and above zero
 *
 * Assumes a square grid read along its rows or columns, every pixel measuring every colour.
 * Source: Goodman, Introduction to Fourier Optics, ch. 2, sampling theorem (from memory). See [README](README.md#sampling).
 *
 * @example nyquistFrequency({ pixelPitch: 0.004 }) // 125
 */
export function nyquistFrequency({ pixelPitch }: Named<Inputs>): number {
  return 1 / (2 * requirePositive('pixel-pitch', pixelPitch));
}

export const nyquistFrequencyFormula = {
  gives: 'nyquist-frequency',
  from: ['pixel-pitch'],
  tex: String.raw`\q{nyquist-frequency} = \frac{1}{2\,\q{pixel-pitch}}`,
  evaluate: nyquistFrequency,
  says: 'A line pair needs two pixels, one for the line and one for the gap, and finer patterns come out false.',
  source: 'Goodman, Introduction to Fourier Optics, ch. 2 (from memory)',
  checkedBy: ['resolution-of-pixels'],
} as const satisfies Formula<Inputs>;
