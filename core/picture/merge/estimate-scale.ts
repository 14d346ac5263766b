import type { Picture } from '../picture.ts';
import { requireShape } from '../same-shape.ts';
import { addExpanded, levelSizes, reduceLevel } from './pyramid.ts';
import { coveredBy, resampled } from './resampled.ts';

/** Corrections with each further level at most; they shrink several times each. */
const mostRounds = 8;
/** Of a pixel, between the sides of the picture: what a correction must reach to be worth another. */
const enough = 1e-3;
/** Of white, squared: how much a pixel must change with the scale, in the mean, for there to be something to compare. */
const nothing = 1e-9;

/** Pixels at the rim of each level that are left out: their details are made of mirror images in part. */
const rim = 2;

/**
 * How many times larger details are in one frame than in another, found by comparing the two.
 *
 * The s at which Σ 4^level (b(s x) − a(x))² is least, a and b being the details of both on the levels of a Laplacian pyramid, x from the middle
 *
 * @param picture the frame
 * @param reference its neighbour in the stack. Frames far apart share too little: multiply the scales from neighbour to neighbour.
 * @returns a ratio, as `scaleOf`; 1 where the frames have nothing to compare, or so little that the scale would be below 1/2 or above 2
 * @throws RangeError for pictures of different shapes
 *
 * Accuracy: [README](README.md#how-well-it-holds). Frames that differ in blur seem to differ a little in scale, for the light that a blur carries outwards
 * lies farther from the middle than that which it carries inwards.
 *
 * @example estimateScale(second, first)
 */
export function estimateScale(picture: Picture, reference: Picture): number {
  requireShape(picture, reference);
  const a = detailsOf(reference);
  const b = detailsOf(picture);
  let scale = 1;
  // Coarse details first: they are met again even where the fine ones are many of their own widths away.
  for (let finest = a.length - 1; finest >= 0; finest--) {
    for (let round = 0; round < mostRounds; round++) {
      const correction = correctionOf(a, b, finest, scale);
      scale *= 1 + correction;
      if (!(scale > 0.5 && scale < 2)) return 1;
      if (Math.abs(correction) * reference.columns < enough) break;
    }
  }
  return scale;
}

/** The details of the mean of a picture's channels, a picture a level, without the last that has none. */
function detailsOf({ columns, rows, channels, light }: Picture): readonly Picture[] {
  const sizes = levelSizes(columns, rows);
  const count = columns * rows;
  const spare = new Float32Array(count);
  let here = Float32Array.from({ length: count }, (_, at) => {
    let sum = 0;
    for (let place = at; place < light.length; place += count) sum += light[place]!;
    return sum / channels;
  });
  return sizes.slice(0, -1).map((size, level) => {
    const details = here;
    const above = sizes[level + 1]!;
    here = new Float32Array(above.columns * above.rows);
    reduceLevel(details, size, here, spare);
    addExpanded(details, size, here, spare, -1);
    return { ...size, channels: 1, light: details };
  });
}

/** One step of Gauss and Newton over all levels from the finest wanted up: by what share the details b are still larger than a. */
function correctionOf(a: readonly Picture[], b: readonly Picture[], finest: number, scale: number): number {
  let [along, steep] = [0, 0];
  for (let level = finest; level < a.length; level++) {
    const sums = compared(a[level]!, resampled(b[level]!, scale), scale);
    along += 4 ** level * sums.along;
    steep += 4 ** level * sums.steep;
  }
  const pixels = a[0]!.columns * a[0]!.rows;
  return steep > nothing * pixels ? -along / steep : 0;
}

/** Σ (b − a) d and Σ d² where both are seen; d is what the mean of both grows by for each share of scale, so that neither counts as the sharper. */
function compared(a: Picture, b: Picture, scale: number): { readonly along: number; readonly steep: number } {
  const { columns, rows } = a;
  const across = coveredBy(columns, scale);
  const down = coveredBy(rows, scale);
  const mean = a.light.map((value, at) => (value + b.light[at]!) / 2);
  let [along, steep] = [0, 0];
  for (let row = down.first + rim; row < down.end - rim; row++) {
    const y = row - (rows - 1) / 2;
    for (let column = across.first + rim; column < across.end - rim; column++) {
      const x = column - (columns - 1) / 2;
      const at = row * columns + column;
      const slope = x * slopeOf(mean, at, 1) + y * slopeOf(mean, at, columns);
      along += (b.light[at]! - a.light[at]!) * slope;
      steep += slope * slope;
    }
  }
  return { along, steep };
}

/** The slope along a line of pixels `step` apart: exact for curves of fourth degree. */
function slopeOf(plane: Float32Array, at: number, step: number): number {
  const [near, far] = [plane[at + step]! - plane[at - step]!, plane[at + 2 * step]! - plane[at - 2 * step]!];
  return (8 * near - far) / 12;
}
