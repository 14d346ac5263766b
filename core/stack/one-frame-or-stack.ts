import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * How a depth is to be taken: in *one frame*; in one, if the lens is *closed further*; *opened* first, closed beyond what keeps the detail; in a
 * *stack*; or not at all as planned, the stack being *too slow* for the subject.
 */
export type FramesWanted = 'one-frame' | 'close-further' | 'open-up' | 'stack' | 'too-slow';

type Inputs = 'subject-depth' | 'depth-of-field' | 'effective-f-number' | 'frame-count';

/** What differs by less than this part of itself is equal but for rounding. */
const rounding = 1e-9;

/**
 * One frame or a stack, by depth, detail and patience.
 *
 * @param given.subjectDepth *Z*, that should be sharp, mm; above 0
 * @param given.depthOfField *T*, of one frame as it is set, mm; above 0, `Infinity` where there is no far end
 * @param given.effectiveFNumber *N_w*, as it is set; above 0
 * @param given.frameCount of a stack of such frames; above 0
 * @param limits.effectiveFNumber as far as it may be closed for the detail wanted; `finestEffectiveFNumber`
 * @param limits.subjectDepth what one frame holds there, mm; `oneFrameDepth`
 * @param limits.frameCount frames that are done while the subject keeps still
 * @returns the first of these that holds, asked in this order: closed too far, deep enough, could be deep enough, too slow, a stack
 * @throws OutOfRange for what must be above zero and is not
 *
 * See [README](README.md#one-frame-or-a-stack).
 *
 * @example oneFrameOrStack({ subjectDepth: 3, depthOfField: 0.16, effectiveFNumber: 36, frameCount: 25 }, { effectiveFNumber: 36.4, subjectDepth: 0.16, frameCount: 16 }) // 'too-slow'
 */
export function oneFrameOrStack(
  { subjectDepth, depthOfField, effectiveFNumber, frameCount }: Named<Inputs>,
  limits: Named<'effective-f-number' | 'subject-depth' | 'frame-count'>,
): FramesWanted {
  requirePositive('subject-depth', subjectDepth);
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('frame-count', frameCount);
  if (effectiveFNumber > limits.effectiveFNumber * (1 + rounding)) return 'open-up';
  if (subjectDepth <= depthOfField * (1 + rounding)) return 'one-frame';
  if (subjectDepth <= limits.subjectDepth * (1 + rounding)) return 'close-further';
  return frameCount > limits.frameCount ? 'too-slow' : 'stack';
}
