import type { Pupil } from './pupil.ts';

/**
 * How well the eye sees each wavelength, in steps of 30 nm: the photopic luminous efficiency V(λ), CIE 1924.
 * Tables: CIE 018:2019; the values were read in an open-source library's copy of the Colour & Vision Research Laboratory's.
 *
 * The curve is a smooth bell, so that ten values stand for its whole table: transfers within 0.001, profiles within 1e-4.
 */
const efficiency: readonly (readonly [nanometres: number, efficiency: number])[] = [
  [420, 0.004],
  [450, 0.038],
  [480, 0.13902],
  [510, 0.503],
  [540, 0.954],
  [570, 0.952],
  [600, 0.631],
  [630, 0.265],
  [660, 0.061],
  [690, 0.00821],
];

/** Where V(λ) is largest, mm. Aberrations of white light are counted in this wavelength. */
export const photopicPeak = 0.000555;

const total = efficiency.reduce((sum, [, weight]) => sum + weight, 0);

/** White light as the eye weighs it: wavelengths in mm, shares that add up to one. Equal energy at every wavelength. */
export const photopicLight: readonly { readonly wavelength: number; readonly share: number }[] = efficiency.map(
  ([nanometres, weight]) => ({ wavelength: nanometres / 1e6, share: weight / total }),
);

/** A pupil whose aberrations are counted in wavelengths of {@link photopicPeak}, counted in another wavelength instead. */
export function inLight(pupil: Pupil, wavelength: number): Pupil {
  const factor = photopicPeak / wavelength;
  return {
    defocusAberration: pupil.defocusAberration * factor,
    sphericalAberration: pupil.sphericalAberration * factor,
  };
}
