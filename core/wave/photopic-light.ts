import { tableRange, towardsY } from '#core/light/cie-1931.ts';
import type { Pupil } from './pupil.ts';

/**
 * How well the eye sees each wavelength, in steps of 30 nm: the photopic luminous efficiency V(λ), CIE 1924.
 * Tables: CIE 018:2019; the values were read in an open-source library's copy of the Colour & Vision Research Laboratory's.
 *
 * The curve is a smooth bell, so that ten values stand for its whole table while the image changes little from one to the next:
 * transfers and profiles within 1.5e-4 up to {@link fewWaves}.
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

/** One wavelength of white light, mm, and its share of the whole. */
export interface Light {
  readonly wavelength: number;
  readonly share: number;
}

function shared(weights: readonly (readonly [nanometres: number, weight: number])[]): readonly Light[] {
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return weights.map(([nanometres, weight]) => ({ wavelength: nanometres / 1e6, share: weight / total }));
}

/** White light as the eye weighs it: shares add up to one. Equal energy at every wavelength. */
export const photopicLight: readonly Light[] = shared(efficiency);

/** The same in steps of 10 nm, from 400 to 720 nm. */
const closely: readonly Light[] = shared(
  Array.from({ length: 33 }, (_, step) => {
    const nanometres = 400 + 10 * step;
    return [nanometres, towardsY[(nanometres - tableRange.first) / tableRange.step]!] as const;
  }),
);

/** As many wavelengths of aberration, of both kinds together, as ten wavelengths of light stand for. */
export const fewWaves = 4;

/**
 * White light in as many wavelengths as an image with these aberrations asks for: the more waves, the faster it changes with their
 * length. Against steps of 1 nm transfers are within 3e-4 and profiles within 1e-4, for up to 200 waves.
 */
export function photopicLightFor({ defocusAberration, sphericalAberration }: Pupil): readonly Light[] {
  return Math.abs(defocusAberration) + Math.abs(sphericalAberration) <= fewWaves ? photopicLight : closely;
}

/** A pupil whose aberrations are counted in wavelengths of {@link photopicPeak}, counted in another wavelength instead. */
export function inLight(pupil: Pupil, wavelength: number): Pupil {
  const factor = photopicPeak / wavelength;
  return {
    defocusAberration: pupil.defocusAberration * factor,
    sphericalAberration: pupil.sphericalAberration * factor,
  };
}
