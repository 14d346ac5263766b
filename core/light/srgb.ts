import type { Tristimulus } from './tristimulus.ts';

/** Red, green and blue of a screen. */
export type Rgb = readonly [red: number, green: number, blue: number];

/**
 * The light of a screen's three primaries that gives a colour: linear sRGB.
 *
 * @returns in proportion to light; below 0 or above 1 where the screen cannot show the colour
 * @throws RangeError for light that is no number
 *
 * Source: IEC 61966-2-1:1999, section 5.3 with the digits of its amendment 1 (from memory); white is D65.
 */
export function linearSrgb(colour: Tristimulus): Rgb {
  const [x, y, z] = required(colour);
  return [
    3.2406255 * x - 1.537208 * y - 0.4986286 * z,
    -0.9689307 * x + 1.8757561 * y + 0.0415175 * z,
    0.0557101 * x - 0.2040211 * y + 1.0569959 * z,
  ];
}

/** How much each primary adds to luminance: the second row of the inverse, IEC 61966-2-1. */
const luminanceShares: Rgb = [0.2126, 0.7152, 0.0722];

/** Y of a linear colour, 1 for the screen's white. Throws RangeError for light that is no number. */
export function luminanceOf(linear: Rgb): number {
  return required(linear).reduce((total, light, primary) => total + light * luminanceShares[primary]!, 0);
}

/** True where a screen can show a linear colour as it is. */
export function isShowable(linear: Rgb): boolean {
  return linear.every((light) => light >= 0 && light <= 1);
}

/**
 * The nearest colour that a screen can show, as near as mixing with grey gets: the same luminance and hue, paler.
 *
 * @param linear any linear colour
 * @returns the colour itself where {@link isShowable}; white where it is brighter than white, black where it has no luminance
 * @throws RangeError for light that is no number
 */
export function showable(linear: Rgb): Rgb {
  const grey = luminanceOf(linear);
  if (grey >= 1) return [1, 1, 1];
  if (grey <= 0) return [0, 0, 0];
  const room = linear.map((light) => (light > grey ? (1 - grey) / (light - grey) : grey / (grey - light)));
  const kept = Math.min(1, ...room);
  return linear.map((light) => clamped(grey + kept * (light - grey))) as unknown as Rgb;
}

/**
 * The numbers that a page gives a screen for a linear colour.
 *
 * 12.92 L up to 0.0031308, 1.055 L^(1/2.4) − 0.055 above
 *
 * @param linear each from 0 to 1; see {@link showable}
 * @returns each from 0 to 1; times 255 for a byte
 * @throws RangeError for light that is no number
 *
 * Source: IEC 61966-2-1:1999, section 5.2 (from memory).
 */
export function encodedSrgb(linear: Rgb): Rgb {
  return required(linear).map((light) =>
    light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055,
  ) as unknown as Rgb;
}

function required<Light extends readonly number[]>(colour: Light): Light {
  const wrong = colour.find((light) => !Number.isFinite(light));
  if (wrong !== undefined) throw new RangeError(`the light is ${wrong}; accepted: a finite number`);
  return colour;
}

/** Rounding alone can leave a primary just outside. */
function clamped(light: number): number {
  return Math.min(1, Math.max(0, light));
}
