import { encodedSrgb } from '#core/light/srgb.ts';
import type { Picture } from './picture.ts';

/**
 * The number from 0 to 255 that a screen is given for light from 0 to 1: sRGB, cut off beyond white, nothing else done to it.
 *
 * 255 × 12.92 L up to L = 0.0031308, 255 × (1.055 L^(1/2.4) − 0.055) above
 *
 * Source: IEC 61966-2-1:1999, section 5.2 (from memory).
 *
 * @example toneCurve(0.18) // 118
 */
export function toneCurve(light: number): number {
  const shown = Math.min(1, Math.max(0, light));
  return Math.round(255 * encodedSrgb([shown, shown, shown])[0]);
}

/** The picture's pixels for a screen, through {@link toneCurve}: red, green, blue and 255 for each. */
export function toDisplay({ columns, rows, channels, light }: Picture): Uint8ClampedArray<ArrayBuffer> {
  const size = columns * rows;
  const pixels = new Uint8ClampedArray(4 * size).fill(255);
  for (let channel = 0; channel < 3; channel++) {
    const plane = channels === 3 ? channel * size : 0;
    for (let at = 0; at < size; at++) pixels[4 * at + channel] = shades[shadeOf(light[plane + at]!)]!;
  }
  return pixels;
}

/** So finely that two neighbours among the darkest, where the curve is steepest, differ by less than one number of 255. */
const steps = 8192;
const shades = /* @__PURE__ */ Uint8ClampedArray.from({ length: steps + 1 }, (_, k) => toneCurve(k / steps));

function shadeOf(light: number): number {
  return light > 0 ? Math.min(steps, Math.round(light * steps)) : 0;
}
