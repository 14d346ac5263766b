import { fftOf } from './fft-plan.ts';
import { inverseTransform, transform } from './fft.ts';
import { type Filter, multiply } from './filter.ts';
import type { Pair } from './pair.ts';
import { lanesFor, type Scratch, scratchFor } from './scratch.ts';
import { gatherColumns, scatterColumns, transpose, transposeBack } from './transpose.ts';
import { vectorScratch } from './vector-scratch.ts';

/** Which rows hold anything, and which are wanted afterwards: from the first up to but not including the second. */
export interface RowsInUse {
  readonly filled: readonly [first: number, end: number];
  readonly wanted: readonly [first: number, end: number];
}

/** How many rows or columns are transformed together. */
const batch = 32;

/**
 * Multiplies the spectrum of both planes by a real transfer, in place: a convolution with the point spread function, periodic.
 *
 * The transform of a real plane is Hermitian and a real, even transfer keeps it so, which is why two planes ride as one complex
 * plane and never have to be told apart. Rows outside `filled` must be zero; rows outside `wanted` are left in a state that means nothing.
 */
export function convolve(pair: Pair, filter: Filter, rowsInUse: RowsInUse): void {
  throughSpectrum(pair, (scratch, first, count) => multiply(filter, scratch, first, count), rowsInUse);
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
    gatherColumns(pair, scratch, first, count);
    transform(plan, scratch, lanesFor(count));
    between(scratch, first, count);
    inverseTransform(plan, scratch, lanesFor(count));
    scatterColumns(pair, scratch, first, count, wanted);
  }
  alongRows(pair, scratch, wanted, inverseTransform);
}

/** Where vectors have no room: from one convolution to the next, as large as any has needed. */
let plain = scratchFor(1, 1);

function scratchOnce(size: number): Scratch {
  const vectors = vectorScratch(size);
  if (vectors) return vectors;
  if (plain.re.length < size) plain = scratchFor(size, 1);
  return plain;
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
    transpose(re, scratch.re, columns, first, count);
    transpose(im, scratch.im, columns, first, count);
    step(plan, scratch, lanesFor(count));
    transposeBack(scratch.re, re, columns, first, count);
    transposeBack(scratch.im, im, columns, first, count);
  }
}
