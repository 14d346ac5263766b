import type { Surface } from '../scene.ts';
import type { SceneOptions } from './subject.ts';

/** Red, green, blue of linear sRGB. */
export type Colour = readonly [number, number, number];

/** What one sample of a surface is; written anew for each, so that a million of them cost no garbage. */
export interface Sample {
  red: number;
  green: number;
  blue: number;
  /** mm */
  height: number;
  /** 0 to 1 */
  coverage: number;
}

/** mm on the subject of a column or a row of the grid, to the right and downwards. */
export function placesOf({ columns, rows, pitch, centre }: SceneOptions) {
  return {
    x: Float64Array.from({ length: columns }, (_, column) => (column + 0.5 - columns / 2) * pitch + (centre?.x ?? 0)),
    y: Float64Array.from({ length: rows }, (_, row) => (row + 0.5 - rows / 2) * pitch + (centre?.y ?? 0)),
  };
}

/** A surface that is nowhere yet. */
export function emptySurface({ columns, rows }: SceneOptions): Surface {
  const size = columns * rows;
  return { albedo: new Float32Array(3 * size), height: new Float32Array(size), coverage: new Float32Array(size) };
}

/** A surface painted sample by sample. *paint* fills what it is handed; coverage is 1 unless it says otherwise. */
export function painted(options: SceneOptions, paint: (x: number, y: number, sample: Sample) => void): Surface {
  const surface = emptySurface(options);
  const places = placesOf(options);
  const size = options.columns * options.rows;
  const sample: Sample = { red: 0, green: 0, blue: 0, height: 0, coverage: 1 };
  for (let row = 0, at = 0; row < options.rows; row++) {
    for (let column = 0; column < options.columns; column++, at++) {
      sample.coverage = 1;
      paint(places.x[column]!, places.y[row]!, sample);
      surface.albedo[at] = sample.red;
      surface.albedo[size + at] = sample.green;
      surface.albedo[2 * size + at] = sample.blue;
      surface.height[at] = sample.height;
      surface.coverage[at] = sample.coverage;
    }
  }
  return surface;
}

/** How much of a sample lies within an outline that is *distance* outside it (negative inside), mm. */
export function within(distance: number, pitch: number): number {
  const share = 0.5 - distance / pitch;
  return share <= 0 ? 0 : share >= 1 ? 1 : share;
}

/**
 * How much of a sample a straight stroke covers that reaches *half* to each side of its middle line, *distance* away, mm. What the samples
 * across it cover together is its width, however much thinner than a sample it is.
 */
export function stroke(distance: number, half: number, pitch: number): number {
  return within(distance - half, pitch) - within(distance + half, pitch);
}

/** 0 below *from*, 1 above *to*, smooth between. */
export function ramp(from: number, to: number, value: number): number {
  const share = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return share * share * (3 - 2 * share);
}

/** How much of a pattern so fine is left on such a grid: nothing of what has less than two samples a period, all from four. */
export function bandLimit(period: number, pitch: number): number {
  return ramp(2, 4, period / pitch);
}
