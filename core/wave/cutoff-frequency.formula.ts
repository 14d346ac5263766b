import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireCone } from './require.ts';

type Inputs = 'wavelength' | 'effective-f-number';

/**
 * The spatial frequency on the sensor from which on even a perfect lens passes no contrast at all.
 *
 * ν_c = 1/(λ N_w)
 *
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @returns *ν_c*, line pairs per millimetre on the sensor. Not what can be told apart by eye, which needs some contrast left.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes incoherent light, one wavelength, a circular pupil and a slender cone.
 * Source: Goodman, Introduction to Fourier Optics, ch. 6 (from memory). Derived in [README](README.md#mtf).
 *
 * @example cutoffFrequency({ wavelength: 0.0005, effectiveFNumber: 16 }) // 125
 */
export function cutoffFrequency({ wavelength, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('wavelength', wavelength);
  requireCone(effectiveFNumber);
  return 1 / (wavelength * effectiveFNumber);
}

export const cutoffFrequencyFormula = {
  gives: 'cutoff-frequency',
  from: ['wavelength', 'effective-f-number'],
  tex: String.raw`\q{cutoff-frequency} = \frac{1}{\q{wavelength}\,\q{effective-f-number}}`,
  evaluate: cutoffFrequency,
  says: 'The narrower the cone and the redder the light, the sooner fine patterns vanish.',
  source: 'Goodman, Introduction to Fourier Optics, ch. 6 (from memory)',
  checkedBy: ['resolution-of-pixels'],
} as const satisfies Formula<Inputs>;
