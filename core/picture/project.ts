import type { View } from './picture.ts';
import type { Painted, Reduced } from './reduced.ts';

/** Places on the sensor, mm from the axis, at which a picture is made up: those of its pixels, perhaps some between, and a rim around them. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly spacing: number;
  readonly left: number;
  readonly top: number;
}

/**
 * A surface as the entrance pupil's middle sees it, on a grid of the sensor, still sharp.
 *
 * A place X of the subject at the height h lies behind x on the sensor if X = x (u + δ)/(m u), δ = focus height − h. Since h is only
 * known at X, the two are sought in turn, starting from the neighbour's: the step shrinks each time by the slope times X/u.
 * Light and coverage between samples by cubic convolution (Keys, IEEE Trans. ASSP 29 (1981) 1153; from memory), heights by
 * the mean of the neighbours weighted by their coverage. Beyond its rim a scene goes on as it ends.
 *
 * @throws RangeError for a surface that holds what is not a number
 */
export function projected(scene: Reduced, surface: Painted, view: View, grid: Grid): Painted {
  const size = grid.columns * grid.rows;
  const planes = [...surface.light, surface.coverage];
  const seen = planes.map(() => new Float32Array(size));
  const height = new Float32Array(size);
  const heightNear = heightsOf(scene, surface);
  const { columns, rows, pitch, left, top } = scene;
  const atFocus = 1 / (view.magnification * pitch);
  const perHeight = atFocus / view.entrancePupilDistance;
  const weights = new Float64Array(8);
  let sum = 0;
  let lastRow = view.focusHeight;
  for (let row = 0, at = 0; row < grid.rows; row++) {
    const y = grid.top + row * grid.spacing;
    let known = lastRow;
    for (let column = 0; column < grid.columns; column++, at++) {
      const x = grid.left + column * grid.spacing;
      let across = 0;
      let down = 0;
      for (let round = 0; round < 3; round++) {
        const scale = atFocus + (view.focusHeight - known) * perHeight;
        across = x * scale - left / pitch;
        down = y * scale - top / pitch;
        const found = heightNear(across, down);
        if (found === known) break;
        known = found;
      }
      if (column === 0) lastRow = known;
      height[at] = known;
      const firstColumn = Math.floor(across);
      const firstRow = Math.floor(down);
      cubic(across - firstColumn, weights, 0);
      cubic(down - firstRow, weights, 4);
      const inside = firstColumn >= 1 && firstColumn < columns - 2 && firstRow >= 1 && firstRow < rows - 2;
      for (let k = 0; k < planes.length; k++) {
        const value = inside
          ? meanInside(planes[k]!, columns, firstColumn, firstRow, weights)
          : meanAtRim(planes[k]!, columns, rows, firstColumn, firstRow, weights);
        seen[k]![at] = value;
        sum += value;
      }
      sum += known;
    }
  }
  if (!Number.isFinite(sum)) throw new RangeError('a surface of the scene holds what is not a finite number');
  return { light: seen.slice(0, -1), coverage: seen.at(-1)!, height };
}

/** Weights of the four samples around a place *x* past the second. */
function cubic(x: number, weights: Float64Array, at: number): void {
  weights[at] = 0.5 * x * (x * (2 - x) - 1);
  weights[at + 1] = 1 + 0.5 * x * x * (3 * x - 5);
  weights[at + 2] = 0.5 * x * (1 + x * (4 - 3 * x));
  weights[at + 3] = 0.5 * x * x * (x - 1);
}

function meanInside(plane: Float32Array, columns: number, column: number, row: number, weights: Float64Array): number {
  const wa = weights[0]!;
  const wb = weights[1]!;
  const wc = weights[2]!;
  const wd = weights[3]!;
  let sum = 0;
  let from = (row - 1) * columns + column - 1;
  for (let k = 4; k < 8; k++, from += columns)
    sum += weights[k]! * (wa * plane[from]! + wb * plane[from + 1]! + wc * plane[from + 2]! + wd * plane[from + 3]!);
  return sum;
}

function meanAtRim(
  plane: Float32Array,
  columns: number,
  rows: number,
  column: number,
  row: number,
  weights: Float64Array,
): number {
  let sum = 0;
  for (let k = 0; k < 4; k++) {
    const from = within(row - 1 + k, rows) * columns;
    for (let j = 0; j < 4; j++) sum += weights[4 + k]! * weights[j]! * plane[from + within(column - 1 + j, columns)]!;
  }
  return sum;
}

const within = (index: number, count: number) => (index < 0 ? 0 : index >= count ? count - 1 : index);

/** Heights between samples: the mean of four, weighted by what they cover. A flat surface needs no search. */
function heightsOf({ columns, rows }: Reduced, { height, coverage }: Painted): (column: number, row: number) => number {
  const first = height[0]!;
  if (height.every((value) => value === first)) return () => first;
  return (column, row) => {
    const left = Math.floor(column);
    const top = Math.floor(row);
    const right = column - left;
    const lower = row - top;
    const a = within(left, columns);
    const b = within(left + 1, columns);
    const upperRow = within(top, rows) * columns;
    const lowerRow = within(top + 1, rows) * columns;
    const w0 = (1 - right) * (1 - lower) * coverage[upperRow + a]! + 1e-12;
    const w1 = right * (1 - lower) * coverage[upperRow + b]!;
    const w2 = (1 - right) * lower * coverage[lowerRow + a]!;
    const w3 = right * lower * coverage[lowerRow + b]!;
    return (
      (w0 * height[upperRow + a]! +
        w1 * height[upperRow + b]! +
        w2 * height[lowerRow + a]! +
        w3 * height[lowerRow + b]!) /
      (w0 + w1 + w2 + w3)
    );
  };
}
