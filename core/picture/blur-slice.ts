import type { Blurred } from './composite.ts';
import { convolve, type Pair } from './convolve.ts';
import { dampingOf, type Blur } from './damping.ts';
import { fastLength } from './fft.ts';
import { carriedOn } from './torus.ts';
import { takeShares, type Box, type Sheet } from './sheet.ts';

/**
 * Blurs what a slice has of a surface, on as small a plane as its own blur allows.
 *
 * @param sheet the surface on the grid, its rim included
 * @param slice number of the slice
 * @param box where it has anything, within what can reach the picture
 * @param blur its optics, pixels and movement
 * @param reach how far that carries light, in places of the grid
 * @param picture where the picture lies on the grid
 * @returns planes that hold good until the next slice is blurred
 */
export function blurredSlice(sheet: Sheet, slice: number, box: Box, blur: Blur, reach: number, picture: Box): Blurred {
  const wanted = within(grown(box, reach), picture);
  const { left, top, columns, rows } = planeFor(box, reach, picture);
  const damping = dampingOf(blur, columns, rows);
  const onPlane = moved(box, -left, -top);
  const goesOn = {
    left: box.left <= picture.left - reach,
    right: box.right >= picture.right + reach,
    top: box.top <= picture.top - reach,
    bottom: box.bottom >= picture.bottom + reach,
  };

  const sources = [...sheet.light, sheet.coverage];
  const planes: Float32Array[] = [];
  for (let k = 0; k < sources.length; k += 2) {
    const pair: Pair = { columns, rows, re: room(k, columns * rows), im: room(k + 1, columns * rows) };
    const to = onPlane.top * columns + onPlane.left;
    takeShares(sheet, [sources[k]!, sources[k + 1]!], slice, box, pair, to);
    const filled = carriedOn(pair, onPlane, goesOn, reach);
    convolve(pair, damping, { filled, wanted: [wanted.top - top, wanted.bottom - top] });
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

/** Planes are kept from one slice to the next, so that the memory of a picture does not grow with its slices. */
const rooms: Float32Array[] = [];

function room(number: number, size: number): Float32Array {
  if (!rooms[number] || rooms[number].length < size) rooms[number] = new Float32Array(size);
  return rooms[number].subarray(0, size).fill(0);
}

/** The plane on which a slice is blurred: its first place on the grid, and a size that transforms fast. */
export function planeFor(box: Box, reach: number, picture: Box) {
  const wanted = within(grown(box, reach), picture);
  // Round a torus, what runs out on one side comes in on the other: there has to be room for it outside what is wanted.
  return {
    left: Math.min(box.left, wanted.left),
    top: Math.min(box.top, wanted.top),
    columns: fastLength(Math.max(box.right + reach - wanted.left, wanted.right - (box.left - reach))),
    rows: fastLength(Math.max(box.bottom + reach - wanted.top, wanted.bottom - (box.top - reach))),
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
