import { convolve } from '#core/fourier/convolve.ts';
import { fastLength } from '#core/fourier/fast-length.ts';
import type { Pair } from '#core/fourier/pair.ts';
import { expanded, intersection, translated, type Box } from './box.ts';
import type { Blurred } from './composite.ts';
import { padEdges } from './pad-edges.ts';
import { cropSlice, type SlicedSurface } from './sliced-surface.ts';
import { type SystemBlur, systemOtf } from './system-otf.ts';

/**
 * Blurs what a slice has of a surface, on as small a plane as its own blur allows.
 *
 * @param sliced the surface on the grid, its rim included
 * @param slice number of the slice
 * @param box where it has anything, within what can reach the picture
 * @param blur its optics, pixels and movement
 * @param radius of its point spread function, in places of the grid
 * @param picture where the picture lies on the grid
 * @returns planes that hold good until the next slice is blurred
 */
export function blurredSlice(
  sliced: SlicedSurface,
  slice: number,
  box: Box,
  blur: SystemBlur,
  radius: number,
  picture: Box,
): Blurred {
  const wanted = intersection(expanded(box, radius), picture);
  const { left, top, columns, rows } = planeFor(box, radius, picture);
  const otf = systemOtf(blur, columns, rows);
  const onPlane = translated(box, -left, -top);
  const sides = {
    left: box.left <= picture.left - radius,
    right: box.right >= picture.right + radius,
    top: box.top <= picture.top - radius,
    bottom: box.bottom >= picture.bottom + radius,
  };

  const sources = [...sliced.light, sliced.coverage];
  const planes: Float32Array[] = [];
  for (let k = 0; k < sources.length; k += 2) {
    const pair: Pair = { columns, rows, re: bufferOf(k, columns * rows), im: bufferOf(k + 1, columns * rows) };
    const to = onPlane.top * columns + onPlane.left;
    cropSlice(sliced, [sources[k]!, sources[k + 1]!], slice, box, pair, to);
    const filled = padEdges(pair, onPlane, sides, radius);
    convolve(pair, otf, { filled, wanted: [wanted.top - top, wanted.bottom - top] });
    planes.push(pair.re, pair.im);
  }
  return {
    columns,
    left: left - picture.left,
    top: top - picture.top,
    light: planes.slice(0, -1),
    coverage: planes.at(-1)!,
    wanted: translated(wanted, -picture.left, -picture.top),
  };
}

/** Planes are used again from one slice to the next, so that the memory of a picture does not grow with its slices. */
const buffers: Float32Array[] = [];

function bufferOf(number: number, size: number): Float32Array {
  if (!buffers[number] || buffers[number].length < size) buffers[number] = new Float32Array(size);
  return buffers[number].subarray(0, size).fill(0);
}

/** The plane on which a slice is blurred: its first place on the grid, and a size that transforms fast. */
export function planeFor(box: Box, radius: number, picture: Box) {
  const wanted = intersection(expanded(box, radius), picture);
  // A convolution by Fourier transform is periodic: what runs out on one side comes in on the other, and is padded for outside what is wanted.
  return {
    left: Math.min(box.left, wanted.left),
    top: Math.min(box.top, wanted.top),
    columns: fastLength(Math.max(box.right + radius - wanted.left, wanted.right - (box.left - radius))),
    rows: fastLength(Math.max(box.bottom + radius - wanted.top, wanted.bottom - (box.top - radius))),
  };
}
