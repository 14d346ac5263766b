import type { Formula, Named } from '#core/quantity/formula.ts';
import { framesInTime } from './frames-in-time.ts';

type Inputs = 'time-limit' | 'exposure-time' | 'settling-time' | 'recycling-time';

/**
 * How many frames are finished before a deadline.
 *
 * n = ⌊(limit + wait)/(t + wait)⌋, the wait being the longer of settling and recycling
 *
 * @param given.timeLimit from the beginning of the first frame, s; 0 or above
 * @param given.exposureTime *t*, of one frame, s; above 0
 * @param given.settlingTime until the rail is at rest, s; 0 or above
 * @param given.recyclingTime until the flash is ready, s; 0 or above
 * @returns *n*, a whole number, 0 where the time is too short for one. Frames that would be cut off are not counted.
 * @throws OutOfRange for what lies outside
 *
 * Assumes that settling and recycling go on at the same time.
 * Source: adding up. Derived in [README](README.md#time).
 *
 * @example framesBeforeDeadline({ timeLimit: 10, exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 }) // 4
 */
export function framesBeforeDeadline({ timeLimit, ...pace }: Named<Inputs>): number {
  return framesInTime(pace, timeLimit);
}

export const framesBeforeDeadlineFormula = {
  gives: 'frame-count',
  from: ['time-limit', 'exposure-time', 'settling-time', 'recycling-time'],
  tex: String.raw`\q{frame-count} = \left\lfloor \frac{\q{time-limit} + \max\left(\q{settling-time}, \q{recycling-time}\right)}{\q{exposure-time} + \max\left(\q{settling-time}, \q{recycling-time}\right)} \right\rfloor`,
  evaluate: framesBeforeDeadline,
  says: 'Halve the wait, and nearly twice the frames are done in time.',
  source: 'adding up',
  checkedBy: ['stack-schedules'],
} as const satisfies Formula<Inputs>;
