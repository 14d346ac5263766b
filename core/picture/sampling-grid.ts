import type { Box } from './box.ts';
import type { View } from './view.ts';

/** Places on the sensor, mm from the axis, at which a picture is made up: those of its pixels, perhaps some between, and a rim around them. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly spacing: number;
  readonly left: number;
  readonly top: number;
}

/** A grid of the sensor, and which part of it the picture is. */
export interface SamplingGrid {
  readonly grid: Grid;
  /** its places are the middles of the pixels, and *oversampling* − 1 places between neighbours */
  readonly picture: Box;
}

/** The pixels of a view with places between them, and a rim of *rim* places on every side. */
export function samplingGrid({ columns, rows, pitch }: View, oversampling: number, rim: number): SamplingGrid {
  const spacing = pitch / oversampling;
  const across = oversampling * (columns - 1) + 1;
  const down = oversampling * (rows - 1) + 1;
  return {
    grid: {
      columns: across + 2 * rim,
      rows: down + 2 * rim,
      spacing,
      left: -((columns - 1) / 2) * pitch - rim * spacing,
      top: -((rows - 1) / 2) * pitch - rim * spacing,
    },
    picture: { left: rim, right: rim + across, top: rim, bottom: rim + down },
  };
}

/** Every so many places of a plane, both ways. */
export function decimated(plane: Float32Array, columns: number, rows: number, every: number): Float32Array {
  if (every === 1) return plane;
  const across = (columns - 1) / every + 1;
  const down = (rows - 1) / every + 1;
  const result = new Float32Array(across * down);
  for (let row = 0, at = 0; row < down; row++)
    for (let column = 0; column < across; column++, at++) result[at] = plane[row * every * columns + column * every]!;
  return result;
}
