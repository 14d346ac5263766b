import type { Projected } from './project.ts';
import { placeOf, type Slices } from './slices.ts';

/** Places of a grid from *left* up to but not including *right*, and so on. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A surface on the grid with the place of every sample among the slices. */
export interface Sheet {
  readonly columns: number;
  readonly light: readonly Float32Array[];
  readonly coverage: Float32Array;
  readonly places: Float32Array;
  /** for each slice, what has a share in it; undefined where nothing has */
  readonly boxes: readonly (Box | undefined)[];
}

/** Less than that of a sample is nothing: cubic convolution leaves such traces beside outlines. */
const trace = 1e-4;

/** Sorts a projected surface into slices. */
export function sheetOf({ light, coverage, height }: Projected, columns: number, slices: Slices): Sheet {
  const count = slices.blurs.length;
  const rows = coverage.length / columns;
  const [lefts, rights, tops, bottoms] = [columns, 0, rows, 0].map((start) =>
    new Int32Array(count + 1).fill(start),
  ) as [Int32Array, Int32Array, Int32Array, Int32Array];
  const places = new Float32Array(coverage.length);
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      const place = placeOf(slices, height[at]!);
      places[at] = place;
      if (Math.abs(coverage[at]!) < trace) continue;
      const below = Math.trunc(place);
      for (let slice = below; slice < (place > below ? below + 2 : below + 1); slice++) {
        if (column < lefts[slice]!) lefts[slice] = column;
        if (column >= rights[slice]!) rights[slice] = column + 1;
        if (row < tops[slice]!) tops[slice] = row;
        if (row >= bottoms[slice]!) bottoms[slice] = row + 1;
      }
    }
  }
  const boxes = slices.blurs.map((_, k) =>
    rights[k]! > lefts[k]! ? { left: lefts[k]!, right: rights[k]!, top: tops[k]!, bottom: bottoms[k]! } : undefined,
  );
  return { columns, light, coverage, places, boxes };
}

/** Copies what a slice has of a plane within *box* to a plane of *columns*, its top left corner at *to*. */
export function takeShare(
  { columns: across, places }: Sheet,
  plane: Float32Array,
  slice: number,
  box: Box,
  into: Float32Array,
  columns: number,
  to: number,
): void {
  for (let row = box.top; row < box.bottom; row++) {
    let at = to + (row - box.top) * columns;
    for (let from = row * across + box.left, end = row * across + box.right; from < end; from++, at++) {
      const away = Math.abs(places[from]! - slice);
      into[at] = away < 1 ? (1 - away) * plane[from]! : 0;
    }
  }
}
