import type { Formula, Named } from '#core/quantity/formula.ts';
import { framesForChance, keeperChance } from './frames-for-chance.ts';
import { requireShare } from './share.ts';

type Inputs = 'keeper-share';

/**
 * How many frames to take so that at least one is in focus, nineteen times out of twenty.
 *
 * frames = ⌈ln 0.05 / ln(1 − share)⌉
 *
 * @param given.keeperShare share of frames in focus; above 0, at most 1
 * @returns a whole number, at least 1; 1 from a share of 0.95 on.
 * @throws OutOfRange for a share that is not above 0 and at most 1: where no frame is ever in focus no number is enough
 *
 * Assumes frames that are independent, taken with a moment to sway in between: a burst within one sway is one try.
 * Source: all frames miss with the probability (1 − share)^frames. Derived in [README](README.md#keepers).
 *
 * @example keeperFrames({ keeperShare: 0.3 }) // 9
 */
export function keeperFrames({ keeperShare }: Named<Inputs>): number {
  return framesForChance(requireShare('keeper-share', keeperShare), keeperChance);
}

export const keeperFramesFormula = {
  gives: 'keeper-frames',
  from: ['keeper-share'],
  tex: String.raw`\q{keeper-frames} = \left\lceil \frac{\ln 0.05}{\ln\left(1 - \q{keeper-share}\right)} \right\rceil`,
  evaluate: keeperFrames,
  says: 'If one frame in ten is in focus, twenty-nine give you a 95 % chance of at least one.',
  source: 'derived in core/exposure/README.md#keepers',
  checkedBy: ['chance'],
  // At a share of 1, or what prints as such, the logarithm has no value; one frame is enough. Past ten thousand frames the share would take more figures than a line has.
  holds: ({ keeperShare }) => keeperShare >= 0.0003 && keeperShare < 0.9995,
  sample: { 'keeper-share': [0.001, 0.99] },
} as const satisfies Formula<Inputs>;
