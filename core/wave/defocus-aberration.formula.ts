import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireCone } from './require.ts';

type Inputs = 'defocus-blur' | 'wavelength' | 'effective-f-number';

/**
 * Defocus as waves see it: by how many wavelengths the light of the pupil's rim arrives out of step.
 *
 * W₀₂₀ = b/(8 λ N_w)
 *
 * @param given.defocusBlur *b*, exact geometric diameter on the sensor, mm; 0 or above
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, not of the one that comes to a point before or behind it; 0.5 or above
 * @returns *W₀₂₀*, wavelengths; 0 or above: its sign, which side of the sensor the point falls on, matters only beside spherical aberration
 * @throws OutOfRange for a blur below zero, the others not above zero, or anything not finite
 *
 * Assumes a slender cone. With the shift δz of the image instead, W₀₂₀ = δz/(8 λ N_w N_w′), N_w′ that of the shifted image;
 * δz/(8 λ N_w²) is right to first order only.
 * Source: derived in [README](README.md#pupil).
 *
 * @example defocusAberration({ defocusBlur: 0.0352, wavelength: 0.00055, effectiveFNumber: 8 }) // 1
 */
export function defocusAberration({ defocusBlur, wavelength, effectiveFNumber }: Named<Inputs>): number {
  requireNotNegative('defocus-blur', defocusBlur);
  requirePositive('wavelength', wavelength);
  requireCone(effectiveFNumber);
  return defocusBlur / (8 * wavelength * effectiveFNumber);
}

export const defocusAberrationFormula = {
  gives: 'defocus-aberration',
  from: ['defocus-blur', 'wavelength', 'effective-f-number'],
  tex: String.raw`\q{defocus-aberration} = \frac{\q{defocus-blur}}{8\,\q{wavelength}\,\q{effective-f-number}}`,
  evaluate: defocusAberration,
  says: 'The same width of blur is a larger error, in wavelengths, in a wide cone than in a narrow one.',
  source: 'derived in core/wave/README.md#pupil',
  checkedBy: ['picture-convolution'],
} as const satisfies Formula<Inputs>;
