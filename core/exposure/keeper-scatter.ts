import { OutOfRange, requireNotNegative } from '#core/quantity/errors.ts';

/**
 * How far the count of frames in focus is from the expected number, two times out of three: its standard deviation.
 *
 * √(n p (1 − p))
 *
 * @param given.frames *n*, how many are taken, each without regard to the others; from 0
 * @param given.keeperShare *p*, share of frames in focus, 0 to 1
 * @returns frames; 0 where all are in focus, or none can be
 * @throws OutOfRange for a share that is none, and frames that are none
 *
 * Source: the binomial distribution. Derived in [README](README.md#keepers).
 *
 * @example keeperScatter({ frames: 40, keeperShare: 0.1 }) // 1.8973...
 */
export function keeperScatter({ frames, keeperShare }: { readonly frames: number; readonly keeperShare: number }) {
  if (!(keeperShare >= 0 && keeperShare <= 1)) throw new OutOfRange('keeper-share', keeperShare, '0 to 1');
  requireNotNegative('frame-count', frames);
  return Math.sqrt(frames * keeperShare * (1 - keeperShare));
}
