import type { Box } from './box.ts';
import { extendHeights } from './extended-heights.ts';
import type { Scene, Surface } from './scene.ts';

/** A surface as the renderer reads it: light and coverage multiplied, channels in planes of their own. */
export interface PremultipliedSurface {
  /** one plane a channel: light times coverage */
  readonly light: readonly Float32Array[];
  readonly coverage: Float32Array;
  /** mm; where nothing is covered, that of what is covered nearby */
  readonly height: Float32Array;
  /** heights of its lowest and its highest place, mm */
  readonly low: number;
  readonly high: number;
  /** covers everything */
  readonly solid: boolean;
  /** where there is anything */
  readonly box: Box;
}

/** A scene whose samples are means over squares of *factor* × *factor* samples, in one channel (luminance) or three. */
export interface BinnedScene {
  readonly columns: number;
  readonly rows: number;
  /** mm on the subject */
  readonly pitch: number;
  /** place of the first sample from the axis, mm on the subject */
  readonly left: number;
  readonly top: number;
  readonly surfaces: readonly PremultipliedSurface[];
}

/** Shares of red, green and blue in luminance: IEC 61966-2-1. */
const luminance = [0.2126, 0.7152, 0.0722] as const;

/** The scene with *factor* times fewer samples each way; those that fill no square at the right and lower rim are left out. */
export function binnedScene(scene: Scene, factor: number, channels: 1 | 3): BinnedScene {
  const side = Math.min(factor, scene.columns, scene.rows);
  const first = (count: number) => ((side - 1) / 2 - (count - 1) / 2) * scene.pitch;
  const frame = {
    columns: Math.max(1, Math.floor(scene.columns / side)),
    rows: Math.max(1, Math.floor(scene.rows / side)),
    pitch: scene.pitch * side,
    left: first(scene.columns),
    top: first(scene.rows),
  };
  return {
    ...frame,
    surfaces: scene.surfaces.map((surface) => premultiplied(surface, scene.columns, frame, side, channels)),
  };
}

/** A surface averaged over the squares. */
function premultiplied(
  { albedo, height, coverage }: Surface,
  across: number,
  { columns, rows }: { readonly columns: number; readonly rows: number },
  side: number,
  channels: 1 | 3,
): PremultipliedSurface {
  const plane = coverage.length;
  const size = columns * rows;
  const light = Array.from({ length: channels }, () => new Float32Array(size));
  const covers = new Float32Array(size);
  const heights = new Float32Array(size);
  const [first, second, third] = light;
  const part = 1 / (side * side);
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      let red = 0;
      let green = 0;
      let blue = 0;
      let covered = 0;
      let high = 0;
      for (let y = 0; y < side; y++) {
        const from = (row * side + y) * across + column * side;
        for (let k = from; k < from + side; k++) {
          const share = coverage[k]!;
          if (share === 0) continue;
          red += share * albedo[k]!;
          green += share * albedo[plane + k]!;
          blue += share * albedo[2 * plane + k]!;
          high += share * height[k]!;
          covered += share;
        }
      }
      if (second && third) {
        first![at] = part * red;
        second[at] = part * green;
        third[at] = part * blue;
      } else first![at] = part * (luminance[0] * red + luminance[1] * green + luminance[2] * blue);
      covers[at] = part * covered;
      if (covered > 0) heights[at] = high / covered;
    }
  }
  extendHeights(heights, covers, columns, rows);
  const box = boxOf(covers, columns, rows);
  return { light, coverage: covers, height: heights, ...rangeOf(heights), solid: rangeOf(covers).low === 1, box };
}

function rangeOf(values: Float32Array): { readonly low: number; readonly high: number } {
  let low = Infinity;
  let high = -Infinity;
  for (let at = 0; at < values.length; at++) {
    const value = values[at]!;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return { low, high };
}

function boxOf(coverage: Float32Array, columns: number, rows: number): Box {
  const box = { left: columns, right: 0, top: rows, bottom: 0 };
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      if (!(coverage[at]! > 0)) continue;
      if (column < box.left) box.left = column;
      if (column >= box.right) box.right = column + 1;
      if (row < box.top) box.top = row;
      box.bottom = row + 1;
    }
  }
  return box;
}
