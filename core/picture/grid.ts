import type { View } from './picture.ts';
import type { Grid } from './project.ts';
import type { Box } from './sheet.ts';

/** A grid of the sensor, and which part of it the picture is. */
export interface Framed {
  readonly grid: Grid;
  /** its places are the middles of the pixels, and *oversampling* − 1 places between neighbours */
  readonly picture: Box;
}

/** The pixels of a view with places between them, and a rim of *rim* places on every side. */
export function framed({ columns, rows, pitch }: View, oversampling: number, rim: number): Framed {
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
export function thinned(plane: Float32Array, columns: number, rows: number, every: number): Float32Array {
  if (every === 1) return plane;
  const across = (columns - 1) / every + 1;
  const down = (rows - 1) / every + 1;
  const result = new Float32Array(across * down);
  for (let row = 0, at = 0; row < down; row++)
    for (let column = 0; column < across; column++, at++) result[at] = plane[row * every * columns + column * every]!;
  return result;
}
