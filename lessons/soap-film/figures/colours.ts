import { tableRange, towardsX, towardsY, towardsZ } from '#core/light/cie-1931.ts';
import { encodedSrgb, linearSrgb, type Rgb } from '#core/light/srgb.ts';

/** A colour as a page takes it, from numbers of 0 to 1. */
export const css = (screen: Rgb) => `rgb(${screen.map((part) => Math.round(255 * part)).join(' ')})`;

/** Where a gradient has which colour. */
export interface Stop {
  readonly offset: number;
  readonly colour: string;
}

/** Evenly spaced colours of a film from thickness 0 to *most*. */
export function stopsTo(most: number, count: number, colourAt: (thickness: number) => string): Stop[] {
  return Array.from({ length: count + 1 }, (_, index) => ({
    offset: index / count,
    colour: colourAt((most * index) / count),
  }));
}

/** Pure colours are stronger than a screen: so much of one is shown that the eye's green just fits. */
const shown = 0.75;

/** The rainbow between two wavelengths, nm, as near as a screen gets: what it lacks is left out. */
export function rainbow(from: number, to: number): Stop[] {
  const stops: Stop[] = [];
  for (let wavelength = from; wavelength <= to; wavelength += 10) {
    const row = (wavelength - tableRange.first) / tableRange.step;
    const linear = linearSrgb([towardsX[row]! * shown, towardsY[row]! * shown, towardsZ[row]! * shown]);
    const cut = linear.map((light) => Math.min(1, Math.max(0, light))) as unknown as Rgb;
    stops.push({ offset: (wavelength - from) / (to - from), colour: css(encodedSrgb(cut)) });
  }
  return stops;
}
