import { pixelPitch } from '#core/gaussian/pixel-pitch.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { RulerScale } from './ruler-scale.ts';

/** Two places in a photograph whose distance on the ruler is known. */
export interface TwoPlaces {
  /** Between them, pixels. */
  readonly length: number;
  /** Between them on the ruler, mm. */
  readonly distance: number;
  /** Standard error of one place along the line, pixels. */
  readonly setTo: number;
  readonly sensorWidth: number;
  readonly pixelsAcross: number;
}

/**
 * Magnification and field from two places set by hand, where the marks' own pattern fails.
 *
 * m = (L/d) W_x/n; δm/m = √2 δ/L
 *
 * @param given see {@link TwoPlaces}; all above 0
 * @returns as `rulerScale` does; a tilt does not show in two places, and 5° of it makes m 0.4 % too small
 * @throws OutOfRange for anything not finite and above zero, and for pixels that are no whole number
 *
 * Source: two independent errors add as squares; [README](README.md#two-places).
 *
 * @example twoPlacesScale({ length: 3000, distance: 30, setTo: 1, sensorWidth: 36, pixelsAcross: 6000 }).magnification.value // 0.6
 */
export function twoPlacesScale({
  length,
  distance,
  setTo,
  sensorWidth,
  pixelsAcross,
}: TwoPlaces): Omit<RulerScale, 'change'> {
  requirePositive('extension', distance);
  requirePositive('image-width', length);
  requirePositive('defocus-blur', setTo);
  requirePositive('sensor-width', sensorWidth);
  const pitch = pixelPitch({ sensorWidth, pixelsAcross });
  const magnification = (length * pitch) / distance;
  const share = (Math.SQRT2 * setTo) / length;
  const estimate = (value: number) => ({ value, standardError: share * value });
  return {
    magnification: estimate(magnification),
    fieldWidth: estimate(sensorWidth / magnification),
    pixelsPerMillimetre: estimate(magnification / pitch),
  };
}
