import { lanesFor, type Scratch } from './scratch.ts';
import { sinc } from './sinc.ts';

/** A real transfer on the frequencies of a plane of columns × rows, the same for a frequency and its negative. */
export interface Filter {
  readonly columns: number;
  readonly rows: number;
  /** the quarter of frequencies that are not negative: the same in the other three; the factor 1/(columns rows) of the inverse transform included */
  readonly quarter: Float32Array;
  /** half the phase across a box along a line in any direction, at every column and row, where there is one: it multiplies by sin(a)/a of their sum */
  readonly box?: { readonly acrossColumns: Float64Array; readonly acrossRows: Float64Array };
}

/** Multiplies *count* transformed columns from *first* on, side by side in the scratch, by the filter. */
export function multiply(
  { columns, rows, quarter, box }: Filter,
  scratch: Scratch,
  first: number,
  count: number,
): void {
  const half = Math.floor(columns / 2) + 1;
  const { re, im } = scratch;
  const lanes = lanesFor(count);
  const end = first + count;
  const middle = Math.min(end, half);
  for (let row = 0; row < rows; row++) {
    const from = (2 * row > rows ? rows - row : row) * half;
    let at = row * lanes;
    if (box) {
      for (let column = first; column < end; column++, at++) {
        const across = sinc(box.acrossColumns[column]! + box.acrossRows[row]!);
        const factor = across * quarter[from + (column < half ? column : columns - column)]!;
        re[at] = re[at]! * factor;
        im[at] = im[at]! * factor;
      }
      continue;
    }
    for (let k = from + first; k < from + middle; k++, at++) {
      re[at] = re[at]! * quarter[k]!;
      im[at] = im[at]! * quarter[k]!;
    }
    for (let k = from + columns - Math.max(first, half); k > from + columns - end; k--, at++) {
      re[at] = re[at]! * quarter[k]!;
      im[at] = im[at]! * quarter[k]!;
    }
  }
}
