import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireFrames } from './frames-in-time.ts';

type Inputs = 'frame-count' | 'exposure-time' | 'settling-time' | 'recycling-time';

/**
 * How long a stack takes from the first frame’s beginning to the last one’s end.
 *
 * stack time = n t + (n − 1) max(settling, recycling)
 *
 * @param given.frameCount *n*, at least 1
 * @param given.exposureTime *t*, of one frame, s; above 0
 * @param given.settlingTime until vibration has died, s; 0 or above
 * @param given.recyclingTime until the flash is charged, s; 0 or above; 0 without a flash
 * @returns s. Settling and recycling go on at the same time, so that only the longer of the two counts.
 * @throws OutOfRange for anything not finite, a count below 1, a time of zero or below, and a wait below zero
 *
 * Assumes that moving takes no longer than the wait after it, and no writing pauses.
 * Source: adding up. Derived in [README](README.md#time).
 *
 * @example stackTime({ frameCount: 13, exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 }) // 30.5
 */
export function stackTime({ frameCount, exposureTime, settlingTime, recyclingTime }: Named<Inputs>): number {
  requireFrames(frameCount);
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('settling-time', settlingTime);
  requireNotNegative('recycling-time', recyclingTime);
  return frameCount * exposureTime + (frameCount - 1) * Math.max(settlingTime, recyclingTime);
}

export const stackTimeFormula = {
  gives: 'stack-time',
  from: ['frame-count', 'exposure-time', 'settling-time', 'recycling-time'],
  tex: String.raw`\q{stack-time} = \q{frame-count}\,\q{exposure-time} + \left(\q{frame-count} - 1\right)\max\left(\q{settling-time}, \q{recycling-time}\right)`,
  evaluate: stackTime,
  says: 'Waiting, not exposing, is what takes the time.',
  source: 'adding up',
  checkedBy: ['stack-schedules'],
} as const satisfies Formula<Inputs>;
