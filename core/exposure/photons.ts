import { requirePositive } from '#core/quantity/errors.ts';

/**
 * Photons on a square millimetre for one lux second of light at 540 THz, about 555 nm: 1/(683 lm/W · h · 540 THz) to the square metre, with *h* = 6.62607015 · 10⁻³⁴ J s
 * (SI, 2019). That is 4.09194 · 10⁹; it is taken to the four figures that a page prints.
 *
 * Daylight has more of them, 1.1 · 10¹⁰ between 400 and 700 nm, since the eye hardly sees its ends; a pixel's colour filter takes those away again.
 */
export const photonsPerLuxSecond = 4.092e9;

/** Exposure, lx s, that saturates a camera set to ISO 1: S = 78/H. ISO 12232, saturation-based speed (from memory). */
export const saturationAtIso1 = 78;

/** Exposure, lx s, of a mid-tone at ISO 1: S = 10/H. ISO 12232, standard output sensitivity (from memory). */
export const midToneAtIso1 = 10;

/** Exposure on the sensor that an ISO has for its mid-tone, lx s. Throws OutOfRange for an ISO not finite and above zero. */
export function midToneExposure(iso: number): number {
  return midToneAtIso1 / requirePositive('iso', iso);
}

/** Exposure on the sensor that an ISO has for the brightest tone it still tells apart, lx s. Throws as {@link midToneExposure}. */
export function saturationExposure(iso: number): number {
  return saturationAtIso1 / requirePositive('iso', iso);
}

/**
 * A pixel to compute with where nobody has measured the camera's own. Assumptions, of the right order and no more: they stand
 * on pages where they are used, to be changed there.
 *
 * Source: common practice, from memory: values that measurements by EMVA Standard 1288 of current sensors spread about.
 */
export const assumedPixel = {
  /** *η*, behind a colour filter, at the filter's best. */
  quantumEfficiency: 0.5,
  /** Electrons, at middle ISO settings. */
  readNoise: 3,
  /** Electrons held by each square micrometre: 57600 on a pixel of 6 µm. */
  fullWellPerSquareMicrometre: 1600,
} as const;
