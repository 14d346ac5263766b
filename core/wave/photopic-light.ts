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
 * White light as the eye weighs it, by the photopic luminous efficiency V(λ), CIE 1924, which is the observer's ȳ, from 400 to 720 nm in
 * even steps of 10 nm. Equal energy at every wavelength; the shares add up to one.
 *
 * V(λ) is a smooth bell, so that so few wavelengths stand for its whole table: against steps of 1 nm transfers are within 1e-4 in
 * focus and out of it, for up to 200 waves of aberration, and profiles too. One set for all: where a coarser one gave
 * way to a finer one, curves would have a step.
 */
export const photopicLight: readonly Light[] = steps(400, 720, 10);

function steps(first: number, last: number, step: number): readonly Light[] {
  const weights = Array.from({ length: (last - first) / step + 1 }, (_, index) => {
    const nanometres = first + index * step;
    return { wavelength: nanometres / 1e6, share: towardsY[(nanometres - tableRange.first) / tableRange.step]! };
  });
  const total = weights.reduce((sum, { share }) => sum + share, 0);
  return weights.map(({ wavelength, share }) => ({ wavelength, share: share / total }));
}

/** A pupil whose aberrations are counted in wavelengths of {@link photopicPeak}, counted in another wavelength instead. */
export function inLight(pupil: Pupil, wavelength: number): Pupil {
  const factor = photopicPeak / wavelength;
  return {
    defocusAberration: pupil.defocusAberration * factor,
    sphericalAberration: pupil.sphericalAberration * factor,
  };
}
