import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'longest.exposure-time' | 'needed.exposure-time' | 'frame-fill';

/**
 * By how many stops more exposure is allowed than needed, less what is lost by cropping.
 *
 * stops = log₂(longest/needed) + 2 log₂(share of the picture width)
 *
 * @param given.longestExposureTime the longest exposure allowed, by movement or otherwise, s; above 0
 * @param given.neededExposureTime what the light asks for, s; above 0
 * @param given.frameFill share of the picture width that the subject takes; above 0
 * @returns stops; below 0 where there is too little light. Half the width leaves a quarter of the light that makes the picture: two stops.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a picture cropped to the subject, whose noise goes by the light that fell on what is left.
 * Source: definition of the stop. Derived in [README](README.md#in-hand).
 *
 * @example stopsInHand({ longestExposureTime: 0.01, neededExposureTime: 0.0025, frameFill: 1 }) // 2
 */
export function stopsInHand({ longestExposureTime, neededExposureTime, frameFill }: Named<Inputs>): number {
  requirePositive('longest.exposure-time', longestExposureTime);
  requirePositive('needed.exposure-time', neededExposureTime);
  requirePositive('frame-fill', frameFill);
  return Math.log2(longestExposureTime / neededExposureTime) + 2 * Math.log2(frameFill);
}

export const stopsInHandFormula = {
  gives: 'merit',
  from: ['longest.exposure-time', 'needed.exposure-time', 'frame-fill'],
  tex: String.raw`\q{merit} = \log_2\frac{\q{longest.exposure-time}}{\q{needed.exposure-time}} + 2\log_2\q{frame-fill}`,
  evaluate: stopsInHand,
  says: 'Each is a halving of the time that you could still afford.',
  source: 'derived in core/exposure/README.md#in-hand',
  checkedBy: ['one-frame-and-its-light'],
} as const satisfies Formula<Inputs>;
