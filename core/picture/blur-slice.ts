import type { Blurred } from './composite.ts';
import { convolve, type Pair } from './convolve.ts';
import { dampingOf, type Blur } from './damping.ts';
import { fastLength } from './fft.ts';
import { takeShare, type Box, type Sheet } from './sheet.ts';

/**
 * Blurs what a slice has of a surface, on as small a plane as its own blur allows.
 *
 * @param sheet the surface on the grid, its rim included
 * @param slice number of the slice
 * @param box where it has anything, within what can reach the picture
 * @param blur its optics, pixels and movement
 * @param reach how far that carries light, in places of the grid
 * @param picture where the picture lies on the grid
 */
export function blurredSlice(sheet: Sheet, slice: number, box: Box, blur: Blur, reach: number, picture: Box): Blurred {
  const wanted = within(grown(box, reach), picture);
  const left = Math.min(box.left, wanted.left);
  const top = Math.min(box.top, wanted.top);
  // Round a torus, what runs out on one side comes in on the other: there has to be room for it outside what is wanted.
  const columns = fastLength(Math.max(box.right + reach - wanted.left, wanted.right - (box.left - reach)));
  const rows = fastLength(Math.max(box.bottom + reach - wanted.top, wanted.bottom - (box.top - reach)));
  const damping = dampingOf(blur, columns, rows);
  const inUse = {
    filled: [box.top - top, box.bottom - top],
    wanted: [wanted.top - top, wanted.bottom - top],
  } as const;

  const sources = [...sheet.light, sheet.coverage];
  const planes: Float32Array[] = [];
  for (let k = 0; k < sources.length; k += 2) {
    const pair: Pair = { columns, rows, re: new Float32Array(columns * rows), im: new Float32Array(columns * rows) };
    const to = (box.top - top) * columns + box.left - left;
    takeShare(sheet, sources[k]!, slice, box, pair.re, columns, to);
    takeShare(sheet, sources[k + 1]!, slice, box, pair.im, columns, to);
    convolve(pair, damping, inUse);
    planes.push(pair.re, pair.im);
  }
  return {
    columns,
    left: left - picture.left,
    top: top - picture.top,
    light: planes.slice(0, -1),
    coverage: planes.at(-1)!,
    wanted: moved(wanted, -picture.left, -picture.top),
  };
}

/** A box with so many places more on each side. */
export function grown(box: Box, by: number): Box {
  return { left: box.left - by, right: box.right + by, top: box.top - by, bottom: box.bottom + by };
}

/** What two boxes share. Nothing is left where right is not beyond left, or bottom not beyond top. */
export function within(box: Box, other: Box): Box {
  return {
    left: Math.max(box.left, other.left),
    right: Math.min(box.right, other.right),
    top: Math.max(box.top, other.top),
    bottom: Math.min(box.bottom, other.bottom),
  };
}

function moved(box: Box, right: number, down: number): Box {
  return { left: box.left + right, right: box.right + right, top: box.top + down, bottom: box.bottom + down };
}
