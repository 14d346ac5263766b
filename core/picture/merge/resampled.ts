import { requirePositive } from '#core/quantity/errors.ts';
import type { Picture } from '../picture.ts';
import { splineCoefficients, type Taps, tapsOf } from './b-spline.ts';

/**
 * A picture brought to the scale of another, about its middle.
 *
 * at x: the picture's cubic spline at middle + scale (x − middle)
 *
 * @param picture in which details are `scale` times as large as wanted
 * @param scale above 0; 1 leaves the picture as it is
 * @returns a picture of the same size. Where it would look beyond the picture's rim there are mirror images: see {@link coveredBy}.
 * @throws OutOfRange for a scale that is none
 *
 * Assumes scales near 1: fine patterns of a picture made much smaller come back as false ones.
 * Derived in [README](README.md#scale).
 *
 * @example resampled(frame, scaleOf(view, reference))
 */
export function resampled(picture: Picture, scale: number): Picture {
  requirePositive('magnification', scale);
  if (scale === 1) return picture;
  const { columns, rows, channels } = picture;
  const size = columns * rows;
  const light = new Float32Array(size * channels);
  const across = tapsOf(columns, scale);
  const down = tapsOf(rows, scale);
  const half = new Float32Array(size);
  for (let channel = 0; channel < channels; channel++) {
    const plane = picture.light.slice(channel * size, (channel + 1) * size);
    splineCoefficients(plane, { length: columns, step: 1, lines: rows, apart: columns });
    splineCoefficients(plane, { length: rows, step: columns, lines: columns, apart: 1 });
    alongRows(plane, half, columns, rows, across);
    alongColumns(half, light.subarray(channel * size, (channel + 1) * size), columns, rows, down);
  }
  return { columns, rows, channels, light };
}

/** The columns or rows, first and past the last, whose places at a scale lie within the picture. */
export function coveredBy(length: number, scale: number): { readonly first: number; readonly end: number } {
  const middle = (length - 1) / 2;
  const first = Math.max(0, Math.ceil(middle - length / 2 / scale - 1e-9));
  return { first, end: length - first };
}

function alongRows(from: Float32Array, into: Float32Array, columns: number, rows: number, { index, weight }: Taps) {
  for (let row = 0, at = 0; row < rows; row++) {
    const start = row * columns;
    for (let tap = 0; tap < 4 * columns; tap += 4, at++) {
      into[at] =
        weight[tap]! * from[start + index[tap]!]! +
        weight[tap + 1]! * from[start + index[tap + 1]!]! +
        weight[tap + 2]! * from[start + index[tap + 2]!]! +
        weight[tap + 3]! * from[start + index[tap + 3]!]!;
    }
  }
}

function alongColumns(from: Float32Array, into: Float32Array, columns: number, rows: number, { index, weight }: Taps) {
  for (let row = 0, at = 0; row < rows; row++) {
    const tap = 4 * row;
    const [a, b, c, d] = [0, 1, 2, 3].map((k) => index[tap + k]! * columns) as [number, number, number, number];
    const [wa, wb, wc, wd] = weight.subarray(tap, tap + 4) as unknown as [number, number, number, number];
    for (let column = 0; column < columns; column++, at++)
      into[at] = wa * from[a + column]! + wb * from[b + column]! + wc * from[c + column]! + wd * from[d + column]!;
  }
}
