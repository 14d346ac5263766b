import type { Scene, Surface } from './scene.ts';

/** A surface as the renderer reads it: light and coverage multiplied, channels in planes of their own. */
export interface Painted {
  /** one plane a channel: light times coverage */
  readonly light: readonly Float32Array[];
  readonly coverage: Float32Array;
  /** mm; where nothing is covered it means nothing */
  readonly height: Float32Array;
}

/** A scene whose samples are means over squares of *factor* × *factor* samples, in one channel (luminance) or three. */
export interface Reduced {
  readonly columns: number;
  readonly rows: number;
  /** mm on the subject */
  readonly pitch: number;
  /** place of the first sample from the axis, mm on the subject */
  readonly left: number;
  readonly top: number;
  readonly surfaces: readonly Painted[];
}

/** Shares of red, green and blue in luminance: IEC 61966-2-1. */
const luminance = [0.2126, 0.7152, 0.0722] as const;

/** The scene with *factor* times fewer samples each way; those that fill no square at the right and lower rim are left out. */
export function reducedScene(scene: Scene, factor: number, channels: 1 | 3): Reduced {
  const columns = Math.max(1, Math.floor(scene.columns / factor));
  const rows = Math.max(1, Math.floor(scene.rows / factor));
  const side = Math.min(factor, scene.columns, scene.rows);
  const first = (count: number) => ((side - 1) / 2 - (count - 1) / 2) * scene.pitch;
  return {
    columns,
    rows,
    pitch: scene.pitch * side,
    left: first(scene.columns),
    top: first(scene.rows),
    surfaces: scene.surfaces.map((surface) => painted(surface, scene.columns, columns, rows, side, channels)),
  };
}

function painted(
  { albedo, height, coverage }: Surface,
  across: number,
  columns: number,
  rows: number,
  side: number,
  channels: 1 | 3,
): Painted {
  const plane = coverage.length;
  const size = columns * rows;
  const light = Array.from({ length: channels }, () => new Float32Array(size));
  const result = { light, coverage: new Float32Array(size), height: new Float32Array(size) };
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
          red += share * albedo[k]!;
          green += share * albedo[plane + k]!;
          blue += share * albedo[2 * plane + k]!;
          high += share * height[k]!;
          covered += share;
        }
      }
      if (channels === 1) light[0]![at] = part * (luminance[0] * red + luminance[1] * green + luminance[2] * blue);
      else {
        light[0]![at] = part * red;
        light[1]![at] = part * green;
        light[2]![at] = part * blue;
      }
      result.coverage[at] = part * covered;
      result.height[at] = covered > 0 ? high / covered : 0;
    }
  }
  return result;
}
