import { requireNotNegative } from '#core/quantity/errors.ts';

/**
 * One streak for several movements at once: the root of the sum of their squares.
 *
 * @param streaks of movements that have nothing to do with each other, mm on the sensor; each 0 or above
 * @returns mm on the sensor, 0 for none. What their directions make of it in the single frame lies between the differences and the sum.
 * @throws OutOfRange for a streak not finite or below zero
 *
 * Assumes independent causes: the squares of their lengths add on average, whatever their directions. See [README](README.md#slowest).
 *
 * @example combinedMotionBlur([0.03, 0.04]) // 0.05
 */
export function combinedMotionBlur(streaks: readonly number[]): number {
  return Math.hypot(...streaks.map((streak) => requireNotNegative('motion-blur', streak)));
}
