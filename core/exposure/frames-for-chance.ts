import { requireShare } from './share.ts';

/** Nineteen times out of twenty there is to be a keeper: our choice, the statistician's usual one. */
export const keeperChance = 0.95;

/** Where the last frame is needed for less than this part of itself, rounding asks for it and the chance does not. */
const rounding = 1e-9;

/**
 * How many independent frames give at least one success with a chance: ⌈ln(1 − chance)/ln(1 − share)⌉.
 *
 * @param share of successes, above 0 and at most 1
 * @param chance wanted, above 0 and at most 1; 1 only where each frame is a success
 * @returns a whole number, at least 1; `Infinity` for a chance of 1 with a share below it
 * @throws OutOfRange for a share or a chance outside
 *
 * See [README](README.md#keepers).
 *
 * @example framesForChance(0.1, 0.95) // 29
 */
export function framesForChance(share: number, chance: number): number {
  requireShare('keeper-share', share);
  if (share >= requireShare('keeper-share', chance)) return 1;
  // log1p keeps the digits of a tiny share, which 1 − share would lose.
  return Math.max(1, Math.ceil(Math.log1p(-chance) / Math.log1p(-share) - rounding));
}
