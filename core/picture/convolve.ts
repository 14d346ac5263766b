import { vectorScratch } from './vector-scratch.ts';
import { fftOf, lanesFor, scratchFor, transform, transformBack, type Scratch } from './fft.ts';
import { damp, type Damping } from './damping.ts';

/** Two real planes that are blurred alike, as the real and imaginary halves of one complex plane. */
export interface Pair {
  readonly columns: number;
  readonly rows: number;
  readonly re: Float32Array;
  readonly im: Float32Array;
}

/** Which rows hold anything, and which are wanted afterwards: from the first up to but not including the second. */
export interface RowsInUse {
  readonly filled: readonly [first: number, end: number];
  readonly wanted: readonly [first: number, end: number];
}

/** How many rows or columns are transformed together. */
const batch = 32;

/**
 * Multiplies the spectrum of both planes by a real transfer, in place: a convolution with a point's image, round a torus.
 *
 * The transform of a real plane is Hermitian and a real, even transfer keeps it so, which is why two planes ride as one complex
 * plane and never have to be told apart. Rows outside `filled` must be zero; rows outside `wanted` are left in a state that means nothing.
 */
export function convolve(pair: Pair, damping: Damping, rowsInUse: RowsInUse): void {
  throughSpectrum(pair, (scratch, first, count) => damp(damping, scratch, first, count), rowsInUse);
}

/**
 * Transforms both planes there and back, times their size, and shows their spectrum in between.
 *
 * @param between is given *count* columns of the spectrum from *first* on, side by side in the scratch, a row every {@link lanesFor} them
 */
export function throughSpectrum(
  pair: Pair,
  between: (scratch: Scratch, first: number, count: number) => void,
  { filled, wanted }: RowsInUse,
): void {
  const scratch = scratchOnce(Math.max(pair.columns, pair.rows) * batch);
  alongRows(pair, scratch, filled, transform);
  const plan = fftOf(pair.rows);
  for (let first = 0; first < pair.columns; first += batch) {
    const count = Math.min(batch, pair.columns - first);
    takeColumns(pair, scratch, first, count);
    transform(plan, scratch, lanesFor(count));
    between(scratch, first, count);
    transformBack(plan, scratch, lanesFor(count));
    putColumns(pair, scratch, first, count, wanted);
  }
  alongRows(pair, scratch, wanted, transformBack);
}

/** Kept from one convolution to the next, as large as any has needed. */
let kept = scratchFor(1, 1);

function scratchOnce(size: number): Scratch {
  if (kept.re.length < size) kept = vectorScratch(size) ?? scratchFor(size, 1);
  return kept;
}

function alongRows(
  { columns, re, im }: Pair,
  scratch: Scratch,
  [start, end]: readonly [number, number],
  step: typeof transform,
): void {
  const plan = fftOf(columns);
  for (let first = start; first < end; first += batch) {
    const count = Math.min(batch, end - first);
    turned(re, scratch.re, columns, first, count);
    turned(im, scratch.im, columns, first, count);
    step(plan, scratch, lanesFor(count));
    turnedBack(scratch.re, re, columns, first, count);
    turnedBack(scratch.im, im, columns, first, count);
  }
}

/** Rows become columns: four rows at once, so that what is written lies side by side. */
function turned(plane: Float32Array, to: Float32Array, columns: number, first: number, count: number): void {
  const lanes = lanesFor(count);
  for (let row = 0; row < count; row += 4) {
    const a = (first + row) * columns;
    const b = row + 1 < count ? a + columns : a;
    const c = row + 2 < count ? b + columns : b;
    const d = row + 3 < count ? c + columns : c;
    for (let column = 0, at = row; column < columns; column++, at += lanes) {
      to[at] = plane[a + column]!;
      to[at + 1] = plane[b + column]!;
      to[at + 2] = plane[c + column]!;
      to[at + 3] = plane[d + column]!;
    }
  }
}

/** Columns become rows again. */
function turnedBack(from: Float32Array, plane: Float32Array, columns: number, first: number, count: number): void {
  const lanes = lanesFor(count);
  for (let row = 0; row < count; row += 4) {
    const left = Math.min(4, count - row);
    const a = (first + row) * columns;
    if (left < 4) {
      for (let k = 0; k < left; k++)
        for (let column = 0, at = row + k; column < columns; column++, at += lanes)
          plane[a + k * columns + column] = from[at]!;
      continue;
    }
    const b = a + columns;
    const c = b + columns;
    const d = c + columns;
    for (let column = 0, at = row; column < columns; column++, at += lanes) {
      plane[a + column] = from[at]!;
      plane[b + column] = from[at + 1]!;
      plane[c + column] = from[at + 2]!;
      plane[d + column] = from[at + 3]!;
    }
  }
}

function takeColumns({ columns, rows, re, im }: Pair, scratch: Scratch, first: number, count: number): void {
  const lanes = lanesFor(count);
  const { re: toRe, im: toIm } = scratch;
  for (let row = 0; row < rows; row++) {
    const from = row * columns + first;
    const to = row * lanes;
    for (let k = 0; k < count; k++) {
      toRe[to + k] = re[from + k]!;
      toIm[to + k] = im[from + k]!;
    }
  }
}

function putColumns(
  { columns, re, im }: Pair,
  scratch: Scratch,
  first: number,
  count: number,
  [start, end]: readonly [number, number],
): void {
  const lanes = lanesFor(count);
  const { re: fromRe, im: fromIm } = scratch;
  for (let row = start; row < end; row++) {
    const to = row * columns + first;
    const from = row * lanes;
    for (let k = 0; k < count; k++) {
      re[to + k] = fromRe[from + k]!;
      im[to + k] = fromIm[from + k]!;
    }
  }
}
