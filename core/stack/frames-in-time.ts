import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';

/** How a stack is taken, frame by frame. */
export interface StackPace {
  /** *t*, of one frame, s, above 0 */
  readonly exposureTime: number;
  /** s, 0 or above */
  readonly settlingTime: number;
  /** s, 0 or above */
  readonly recyclingTime: number;
  /** Whether both waits run at once, as they do unless said otherwise, or one after the other. */
  readonly waits?: 'together' | 'in turn';
}

/** A frame that misses the deadline by less than this part of itself misses it by rounding. */
const rounding = 1e-9;

/** Throws OutOfRange unless *frameCount* is finite and at least 1. Returns it, for use inline. */
export function requireFrames(frameCount: number): number {
  if (!(frameCount >= 1 && frameCount < Infinity)) throw new OutOfRange('frame-count', frameCount, 'at least 1 frame');
  return frameCount;
}

/**
 * The frames of a stack that are finished before a deadline: the subject melts, opens or walks away.
 *
 * ⌊(limit + wait)/(t + wait)⌋, with wait the longer of settling and recycling, or their sum where they come in turn
 *
 * @param pace see {@link StackPace}
 * @param timeLimit s from the beginning of the first frame, 0 or above
 * @returns a whole number, 0 where the time is too short for one
 * @throws OutOfRange for what lies outside
 *
 * See [README](README.md#time).
 *
 * @example framesInTime({ exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 }, 10) // 4
 */
export function framesInTime(pace: StackPace, timeLimit: number): number {
  const { exposureTime, settlingTime, recyclingTime, waits = 'together' } = pace;
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('settling-time', settlingTime);
  requireNotNegative('recycling-time', recyclingTime);
  const wait = waits === 'together' ? Math.max(settlingTime, recyclingTime) : settlingTime + recyclingTime;
  requireNotNegative('time-limit', timeLimit);
  return Math.floor((timeLimit + wait) / (exposureTime + wait) + rounding);
}

/**
 * The frames that a deadline takes off the end of a stack of so many.
 *
 * @returns a whole number, 0 where the stack is done in time
 * @throws OutOfRange as {@link framesInTime} does, and for a count that is not whole, or below 1
 *
 * @example framesLost({ exposureTime: 0.5, settlingTime: 2, recyclingTime: 1 }, { frameCount: 13, timeLimit: 10 }) // 9
 */
export function framesLost(pace: StackPace, given: { frameCount: number; timeLimit: number }): number {
  if (!Number.isInteger(requireFrames(given.frameCount))) {
    throw new OutOfRange('frame-count', given.frameCount, 'a whole number');
  }
  return Math.max(0, given.frameCount - framesInTime(pace, given.timeLimit));
}
