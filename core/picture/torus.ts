import type { Pair } from './convolve.ts';
import type { Box } from './sheet.ts';

/** Which sides of a box the scene goes on beyond. */
export interface GoesOn {
  readonly left: boolean;
  readonly right: boolean;
  readonly top: boolean;
  readonly bottom: boolean;
}

/**
 * Carries what stands in a box of a plane on beyond its sides, where the scene goes on, into the room that the torus has left: without it
 * the faint far light of waves would be missing along the picture's rim.
 *
 * Where the scene goes on beyond one of two opposite sides only, *reach* places stay empty, so that nothing comes round to the other.
 *
 * @returns the rows that hold anything now: the first, and the one after the last
 */
export function carriedOn(pair: Pair, box: Box, goesOn: GoesOn, reach: number): readonly [number, number] {
  const { columns, rows } = pair;
  const across = shares(columns - (box.right - box.left), goesOn.left, goesOn.right, reach);
  const down = shares(rows - (box.bottom - box.top), goesOn.top, goesOn.bottom, reach);
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

/** How many of the places that are left belong to what goes on before the box, round the torus, and after it. */
function shares(room: number, before: boolean, after: boolean, reach: number) {
  if (before && after) return { before: Math.floor(room / 2), after: room - Math.floor(room / 2) };
  const some = Math.max(0, room - 2 * reach);
  return { before: before ? some : 0, after: after ? some : 0 };
}
