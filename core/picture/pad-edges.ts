import type { Pair } from '#core/fourier/pair.ts';
import type { Box } from './box.ts';

/** Which sides of a box the scene goes on beyond. */
export interface PaddedSides {
  readonly left: boolean;
  readonly right: boolean;
  readonly top: boolean;
  readonly bottom: boolean;
}

/**
 * Pads what stands in a box of a periodic plane by its outermost samples on the sides beyond which the scene goes on, as far as the plane
 * has room: without it the faint far light of waves would be missing along the picture's rim.
 *
 * Where the scene goes on beyond one of two opposite sides only, twice the *radius* of the point spread function stays empty, so that nothing
 * comes round to the other.
 *
 * @returns the rows that hold anything now: the first, and the one after the last
 */
export function padEdges(pair: Pair, box: Box, sides: PaddedSides, radius: number): readonly [number, number] {
  const { columns, rows } = pair;
  const across = shares(columns - (box.right - box.left), sides.left, sides.right, radius);
  const down = shares(rows - (box.bottom - box.top), sides.top, sides.bottom, radius);
  for (const plane of [pair.re, pair.im]) {
    for (let row = box.top; row < box.bottom; row++) {
      const start = row * columns;
      plane.fill(plane[start + box.right - 1]!, start + box.right, start + box.right + across.after);
      plane.fill(plane[start + box.left]!, start + columns - across.before, start + columns);
    }
    const lastRow = (box.bottom - 1) * columns;
    for (let row = box.bottom; row < box.bottom + down.after; row++)
      plane.copyWithin(row * columns, lastRow, lastRow + columns);
    for (let row = rows - down.before; row < rows; row++)
      plane.copyWithin(row * columns, box.top * columns, (box.top + 1) * columns);
  }
  return [down.before > 0 ? 0 : box.top, down.before > 0 ? rows : box.bottom + down.after];
}

/** How many of the places that are left pad the box before its first place, round the period, and after its last. */
function shares(room: number, before: boolean, after: boolean, radius: number) {
  if (before && after) return { before: Math.floor(room / 2), after: room - Math.floor(room / 2) };
  const some = Math.max(0, room - 2 * radius);
  return { before: before ? some : 0, after: after ? some : 0 };
}
