import { chanceFrom } from '#core/chance/chance-from.ts';
import { swayFrom } from '#core/chance/sway.ts';

/** How many frames are dealt at a time. */
export const dealtFrames = 40;

/** Seconds from one frame to the next, on average: long enough that a hand is somewhere else by then. */
const pace = 0.6;
/** By so much of its pace a frame may come early or late: nobody presses like a clock. */
const unevenness = 0.3;

/** Where the hand is, in sways from the middle, at any second: about once to and fro in a second, the same for every reader. */
export const handAt = swayFrom(1242, { slowest: 0.3, fastest: 1.75 });

/** The second at which a deal begins, counted from 0; the one before ends then. */
export const beginOf = (turn: number): number => turn * dealtFrames * pace;

/** When the forty frames of a deal are taken, seconds, in order. */
export function secondsOf(turn: number): readonly number[] {
  return (knownSeconds[turn] ??= Array.from(
    { length: dealtFrames },
    (
      (chance) => (_: unknown, index: number) =>
        beginOf(turn) + (index + 0.5 + unevenness * (2 * chance() - 1)) * pace
    )(chanceFrom(4821 + turn)),
  ));
}

/**
 * Where the hand was at each of the forty frames of a deal, in sways from the middle: the first deal, the second and so on, the same for every reader.
 *
 * @param turn counted from 0
 */
export function deviatesOf(turn: number): readonly number[] {
  return (knownDeviates[turn] ??= secondsOf(turn).map(handAt));
}

const knownSeconds: (readonly number[])[] = [];
const knownDeviates: (readonly number[])[] = [];
