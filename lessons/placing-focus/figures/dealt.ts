import { chanceFrom } from '#core/chance/chance-from.ts';

/** How many frames are dealt at a time. */
export const dealtFrames = 40;

/**
 * Forty places of one who sways, in sways from the middle: the first deal, the second and so on, the same for every reader. Two uniform numbers make two normal
 * ones (Box and Muller).
 *
 * @param turn counted from 0
 */
export function deviatesOf(turn: number): readonly number[] {
  return (known[turn] ??= deal(chanceFrom(1242 + turn)));
}

const known: (readonly number[])[] = [];

function deal(next: () => number): readonly number[] {
  return Array.from({ length: dealtFrames / 2 }, () => {
    const [radius, angle] = [Math.sqrt(-2 * Math.log(1 - next())), 2 * Math.PI * next()];
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  }).flat();
}
