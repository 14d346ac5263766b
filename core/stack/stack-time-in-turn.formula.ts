import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireFrames } from './frames-in-time.ts';

type Inputs = 'frame-count' | 'exposure-time' | 'settling-time' | 'recycling-time';

/**
 * How long a stack takes where one wait begins only after the other has ended.
 *
 * stack time = n t + (n − 1) (settling + recycling)
 *
 * @param given.frameCount *n*, at least 1
 * @param given.exposureTime *t*, of one frame, s; above 0
 * @param given.settlingTime until vibration has died, s; 0 or above
 * @param given.recyclingTime until the flash is charged, or a frame is written, s; 0 or above
 * @returns s, longer than `stackTime`, which lets both run at once
 * @throws OutOfRange for anything not finite, a count below 1, a time of zero or below, and a wait below zero
 *
 * Assumes a controller that does one thing after the other: it moves when the flash reports ready, and then waits for the rig to settle.
 * Source: adding up. Derived in [README](README.md#time).
 *
 * @example stackTimeInTurn({ frameCount: 13, exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 }) // 42.5
 */
export function stackTimeInTurn({ frameCount, exposureTime, settlingTime, recyclingTime }: Named<Inputs>): number {
  requireFrames(frameCount);
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('settling-time', settlingTime);
  requireNotNegative('recycling-time', recyclingTime);
  return frameCount * exposureTime + (frameCount - 1) * (settlingTime + recyclingTime);
}

export const stackTimeInTurnFormula = {
  gives: 'stack-time',
  from: ['frame-count', 'exposure-time', 'settling-time', 'recycling-time'],
  tex: String.raw`\q{stack-time} = \q{frame-count}\,\q{exposure-time} + \left(\q{frame-count} - 1\right)\left(\q{settling-time} + \q{recycling-time}\right)`,
  evaluate: stackTimeInTurn,
  says: 'Waits that follow one another add up; let both run at once and only the longer counts.',
  source: 'adding up',
  checkedBy: ['angles-tanks-and-lights', 'cones-tanks-and-queues', 'stack-schedules'],
} as const satisfies Formula<Inputs>;
