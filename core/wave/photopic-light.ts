import { tableRange, towardsY } from '#core/light/cie-1931.ts';
import type { Pupil } from './pupil.ts';

/** Where V(λ) is largest, mm. Aberrations of white light are counted in this wavelength. */
export const photopicPeak = 0.000555;

/** One wavelength of white light, mm, and its share of the whole. */
export interface Light {
  readonly wavelength: number;
  readonly share: number;
}

/**
 * White light as the eye weighs it, by the photopic luminous efficiency V(λ), CIE 1924, which is the observer's ȳ; in even steps, all in nm.
 * Equal energy at every wavelength.
 */
function steps(first: number, last: number, step: number): readonly Light[] {
  const weights = Array.from({ length: (last - first) / step + 1 }, (_, index) => {
    const nanometres = first + index * step;
    return { wavelength: nanometres / 1e6, share: towardsY[(nanometres - tableRange.first) / tableRange.step]! };
  });
  const total = weights.reduce((sum, { share }) => sum + share, 0);
  return weights.map(({ wavelength, share }) => ({ wavelength, share: share / total }));
}

/**
 * Ten wavelengths; their shares add up to one. V(λ) is a smooth bell, so that they stand for its whole table while the image changes
 * little from one to the next: transfers and profiles within 1.5e-4 up to {@link fewWaves}.
 */
export const photopicLight: readonly Light[] = steps(420, 690, 30);

const closely: readonly Light[] = steps(400, 720, 10);

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
