import { bicubicSampler } from './bicubic.ts';
import type { BinnedScene, PremultipliedSurface } from './binned.ts';
import type { Box } from './box.ts';
import type { Grid } from './sampling-grid.ts';
import type { View } from './view.ts';

/** A surface on a grid of the sensor, still sharp; light times coverage, as {@link PremultipliedSurface}. */
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
export function projected(scene: BinnedScene, surface: PremultipliedSurface, view: View, grid: Grid): Projected {
  const size = grid.columns * grid.rows;
  const light = surface.light.map(() => new Float32Array(size));
  const coverage = new Float32Array(size);
  const height = new Float32Array(size);
  if (surface.solid) coverage.fill(1);
  const between = surface.solid
    ? bicubicSampler(scene, surface.light, light)
    : bicubicSampler(scene, [...surface.light, surface.coverage], [...light, coverage]);
  const heights = surface.height;
  const flat = surface.low === surface.high;
  const { columns } = scene;
  const [lastColumn, lastRow] = [columns - 1, scene.rows - 1];
  const { atNone, perHeight } = scaleOf(scene, view);
  const [left, top] = [scene.left / scene.pitch, scene.top / scene.pitch];
  const seen = boxOnGrid(scene, surface, view, grid);
  let sum = 0;
  let rowStart = heights[0]!;
  for (let row = seen.top; row < seen.bottom; row++) {
    const y = grid.top + row * grid.spacing;
    let known = rowStart;
    let at = row * grid.columns + seen.left;
    for (let column = seen.left; column < seen.right; column++, at++) {
      const x = grid.left + column * grid.spacing;
      let scale = atNone - known * perHeight;
      let across = x * scale - left;
      let down = y * scale - top;
      const enough = 0.01 / (Math.abs(perHeight) * (Math.abs(x) + Math.abs(y)));
      for (let round = flat ? 3 : 0; round < 3; round++) {
        // Linear between the four samples around. Places are never negative here: cutting off is rounding down.
        const inColumn = across < 0 ? 0 : across > lastColumn ? lastColumn : across;
        const inRow = down < 0 ? 0 : down > lastRow ? lastRow : down;
        const a = inColumn | 0;
        const b = a < lastColumn ? a + 1 : a;
        const upperRow = inRow | 0;
        const upper = upperRow * columns;
        const lower = upperRow < lastRow ? upper + columns : upper;
        const right = inColumn - a;
        const above = heights[upper + a]! + right * (heights[upper + b]! - heights[upper + a]!);
        const below = heights[lower + a]! + right * (heights[lower + b]! - heights[lower + a]!);
        const change = above + (inRow - upperRow) * (below - above) - known;
        known += change;
        scale = atNone - known * perHeight;
        across = x * scale - left;
        down = y * scale - top;
        if (Math.abs(change) < enough) break;
      }
      if (column === seen.left) rowStart = known;
      height[at] = known;
      sum += known + between(across, down, at);
    }
  }
  if (!Number.isFinite(sum)) throw new RangeError('a surface of the scene holds what is not a finite number');
  return { light, coverage, height };
}

/** Samples of the scene per millimetre on the sensor, at the height 0, and by how much fewer they are for each mm of height: more where the pupil looks from behind. */
function scaleOf({ pitch }: BinnedScene, { magnification, entrancePupilDistance, focusHeight }: View) {
  const atFocus = 1 / (magnification * pitch);
  const perHeight = atFocus / entrancePupilDistance;
  return { atNone: atFocus + focusHeight * perHeight, perHeight };
}

/** The part of the grid on which a surface can be seen, at whatever of its heights. One that meets the scene's rim goes on beyond it. */
function boxOnGrid(scene: BinnedScene, { box, low, high }: PremultipliedSurface, view: View, grid: Grid): Box {
  const { atNone, perHeight } = scaleOf(scene, view);
  const scales = [atNone - low * perHeight, atNone - high * perHeight];
  const place = (sample: number, start: number, gridStart: number) =>
    scales.map((scale) => ((sample + start / scene.pitch) / scale - gridStart) / grid.spacing);
  const first = (sample: number, start: number, gridStart: number) =>
    sample > 0 ? Math.max(0, Math.floor(Math.min(...place(sample - 2, start, gridStart)))) : 0;
  const end = (sample: number, count: number, start: number, gridStart: number, most: number) =>
    sample < count ? Math.min(most, Math.ceil(Math.max(...place(sample + 1, start, gridStart))) + 1) : most;
  return {
    left: first(box.left, scene.left, grid.left),
    right: end(box.right, scene.columns, scene.left, grid.left, grid.columns),
    top: first(box.top, scene.top, grid.top),
    bottom: end(box.bottom, scene.rows, scene.top, grid.top, grid.rows),
  };
}
