import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'wavelength' | 'numerical-aperture';

/**
 * The depth that diffraction alone allows: what a perfect lens keeps sharp of a subject, however small the circle of confusion.
 *
 * wave depth = λ / NA²
 *
 * @param given.wavelength *λ*, in air, mm, above 0
 * @param given.numericalAperture *NA*, on the subject's side, a sine: above 0 and below 1
 * @returns mm, both sides together. Matters beside the depth from geometry where NA is above about 0.1.
 * @throws OutOfRange for a wavelength not above zero, or an aperture outside 0 to 1
 *
 * Assumes a perfect lens in air.
 * Source: Murphy, Fundamentals of Light Microscopy and Electronic Imaging, p. 90 (n λ/NA², here n = 1). See [README](README.md#waves).
 *
 * @example waveDepth({ wavelength: 0.00055, numericalAperture: 0.1 }) // 0.055
 */
export function waveDepth({ wavelength, numericalAperture }: Named<Inputs>): number {
  requirePositive('wavelength', wavelength);
  if (!(numericalAperture > 0 && numericalAperture < 1)) {
    throw new OutOfRange(
      'numerical-aperture',
      numericalAperture,
      'above 0 and below 1, being the sine of an angle in air',
    );
  }
  return wavelength / numericalAperture ** 2;
}

export const waveDepthFormula = {
  gives: 'wave-depth',
  from: ['wavelength', 'numerical-aperture'],
  tex: String.raw`\q{wave-depth} = \frac{\q{wavelength}}{\q{numerical-aperture}^2}`,
  evaluate: waveDepth,
  says: 'Light is a wave: no depth of field is thinner than this, and a wider cone makes it thinner fast.',
  source: 'Murphy, Fundamentals of Light Microscopy and Electronic Imaging, p. 90',
  checkedBy: ['angles-tanks-and-lights', 'microscope-depth'],
} as const satisfies Formula<Inputs>;
