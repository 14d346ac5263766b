import { sampler } from './between.ts';
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

/** A surface on a grid of the sensor, still sharp; light times coverage, as {@link Painted}. */
export interface Projected {
  readonly light: readonly Float32Array[];
  readonly coverage: Float32Array;
  readonly height: Float32Array;
}

/**
 * A surface as the entrance pupil's middle sees it.
 *
 * A place X of the subject at the height h lies behind x on the sensor if X = x (u + δ)/(m u), δ = focus height − h. Since h is only
 * known at X, the two are sought in turn, starting from the neighbour's: the step shrinks each time by the slope times X/u.
 * Beyond its rim a scene goes on as it ends.
 *
 * @throws RangeError for a surface that holds what is not a number
 */
export function projected(scene: Reduced, surface: Painted, view: View, grid: Grid): Projected {
  const size = grid.columns * grid.rows;
  const light = surface.light.map(() => new Float32Array(size));
  const coverage = new Float32Array(size);
  const height = new Float32Array(size);
  const between = sampler(scene, [...surface.light, surface.coverage], [...light, coverage]);
  const heights = surface.height;
  const { columns, rows } = scene;
  const [lastColumn, lastRow] = [columns - 1, rows - 1];
  const atFocus = 1 / (view.magnification * scene.pitch);
  const perHeight = atFocus / view.entrancePupilDistance;
  const startScale = atFocus + view.focusHeight * perHeight;
  const [left, top] = [scene.left / scene.pitch, scene.top / scene.pitch];
  const reach = reachOf(surface, columns, rows);
  let sum = 0;
  let rowStart = heights[0]!;
  for (let row = 0, at = 0; row < grid.rows; row++) {
    const y = grid.top + row * grid.spacing;
    let known = rowStart;
    for (let column = 0; column < grid.columns; column++, at++) {
      const x = grid.left + column * grid.spacing;
      let scale = startScale - known * perHeight;
      let across = x * scale - left;
      let down = y * scale - top;
      for (let round = surface.flat ? 3 : 0; round < 3; round++) {
        // Linear between the four samples around.
        const inColumn = across < 0 ? 0 : across > lastColumn ? lastColumn : across;
        const inRow = down < 0 ? 0 : down > lastRow ? lastRow : down;
        const a = Math.trunc(inColumn);
        const b = a < lastColumn ? a + 1 : a;
        const upper = Math.trunc(inRow) * columns;
        const lower = upper < lastRow * columns ? upper + columns : upper;
        const right = inColumn - a;
        const above = heights[upper + a]! + right * (heights[upper + b]! - heights[upper + a]!);
        const below = heights[lower + a]! + right * (heights[lower + b]! - heights[lower + a]!);
        const found = above + (inRow - Math.trunc(inRow)) * (below - above);
        const change = found - known;
        known = found;
        scale = startScale - known * perHeight;
        across = x * scale - left;
        down = y * scale - top;
        if (Math.abs(change * perHeight) * (Math.abs(x) + Math.abs(y)) < 0.01) break;
      }
      if (column === 0) rowStart = known;
      height[at] = known;
      sum += known;
      if (across > reach.left && across < reach.right && down > reach.top && down < reach.bottom)
        sum += between(across, down, at);
    }
  }
  if (!Number.isFinite(sum)) throw new RangeError('a surface of the scene holds what is not a finite number');
  return { light, coverage, height };
}

/** Outside of this no sample within two columns or rows covers anything. A surface that meets the rim goes on beyond it. */
function reachOf({ box }: Painted, columns: number, rows: number) {
  return {
    left: box.left > 0 ? box.left - 2 : -Infinity,
    right: box.right < columns ? box.right + 1 : Infinity,
    top: box.top > 0 ? box.top - 2 : -Infinity,
    bottom: box.bottom < rows ? box.bottom + 1 : Infinity,
  };
}
