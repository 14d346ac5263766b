import type { Box } from './box.ts';
import type { Projected } from './project.ts';
import { placesOf, type Slices } from './slices.ts';

/** A surface on the grid with the place of every sample among the slices. */
export interface SlicedSurface {
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
export function slicedSurface({ light, coverage, height }: Projected, columns: number, slices: Slices): SlicedSurface {
  const rows = coverage.length / columns;
  const places = placesOf(slices, height);
  const bounds = new Bounds(slices.blurs.length, columns, rows);
  for (let row = 0, at = 0; row < rows; row++) {
    // Neighbours mostly lie between the same two slices: boxes grow by runs of such.
    let run = none;
    let start = 0;
    for (let column = 0; column < columns; column++, at++) {
      const share = coverage[at]!;
      const between = share > trace || share < -trace ? slicesAround(places[at]!) : none;
      if (between === run) continue;
      if (run !== none) bounds.include(run, start, column, row);
      run = between;
      start = column;
    }
    if (run !== none) bounds.include(run, start, columns, row);
  }
  return { columns, light, coverage, places, boxes: bounds.boxes() };
}

const none = -1;

/** 2k on the slice k, 2k + 1 between it and the next. */
function slicesAround(place: number): number {
  const below = place | 0;
  return place > below ? 2 * below + 1 : 2 * below;
}

/** The smallest boxes around what each slice has a share in. */
class Bounds {
  readonly #lefts: Int32Array;
  readonly #rights: Int32Array;
  readonly #tops: Int32Array;
  readonly #bottoms: Int32Array;

  constructor(count: number, columns: number, rows: number) {
    this.#lefts = new Int32Array(count).fill(columns);
    this.#rights = new Int32Array(count);
    this.#tops = new Int32Array(count).fill(rows);
    this.#bottoms = new Int32Array(count);
  }

  /** Both slices of what {@link slicesAround} says get the places of a row from *start* up to but not including *end*. */
  include(around: number, start: number, end: number, row: number): void {
    for (let slice = around >> 1; slice <= (around + 1) >> 1; slice++) {
      if (start < this.#lefts[slice]!) this.#lefts[slice] = start;
      if (end > this.#rights[slice]!) this.#rights[slice] = end;
      if (row < this.#tops[slice]!) this.#tops[slice] = row;
      if (row >= this.#bottoms[slice]!) this.#bottoms[slice] = row + 1;
    }
  }

  boxes(): (Box | undefined)[] {
    return Array.from(this.#lefts, (left, k) => {
      const right = this.#rights[k]!;
      return right > left ? { left, right, top: this.#tops[k]!, bottom: this.#bottoms[k]! } : undefined;
    });
  }
}

/** Crops two planes of a surface to *box*, weighted by their shares of a slice, into two of *columns*, the box's first place to *to*. */
export function cropSlice(
  { columns: across, places }: SlicedSurface,
  planes: readonly [Float32Array, Float32Array],
  slice: number,
  box: Box,
  into: { readonly re: Float32Array; readonly im: Float32Array; readonly columns: number },
  to: number,
): void {
  const { re, im } = into;
  const [first, second] = planes;
  for (let row = box.top; row < box.bottom; row++) {
    let at = to + (row - box.top) * into.columns;
    for (let from = row * across + box.left, end = row * across + box.right; from < end; from++, at++) {
      const away = places[from]! - slice;
      if (away <= -1 || away >= 1) continue;
      const share = away < 0 ? 1 + away : 1 - away;
      re[at] = share * first[from]!;
      im[at] = share * second[from]!;
    }
  }
}
