import type { Pair } from './pair.ts';
import { lanesFor, type Scratch } from './scratch.ts';

/**
 * Transposes *count* rows of a plane from *first* on into columns side by side: four rows at once, so that what is written lies side by side.
 */
export function transpose(plane: Float32Array, to: Float32Array, columns: number, first: number, count: number): void {
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

/** Transposes such columns back into rows of a plane. */
export function transposeBack(
  from: Float32Array,
  plane: Float32Array,
  columns: number,
  first: number,
  count: number,
): void {
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

/** Copies *count* columns of both planes from *first* on to where they are transformed. */
export function gatherColumns({ columns, rows, re, im }: Pair, scratch: Scratch, first: number, count: number): void {
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

/** Copies them back, in the rows that are wanted. */
export function scatterColumns(
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
