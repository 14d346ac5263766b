import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { frameStep } from './frame-step.formula.ts';

type Inputs = 'subject-depth' | 'depth-of-field' | 'overlap';

/** A frame that is needed for less than this part of a step is asked for by rounding, not by the subject. */
const rounding = 1e-9;

/**
 * How many frames cover a subject’s depth.
 *
 * n = 1 + ⌈(Z − T) / (T (1 − overlap))⌉, and 1 where Z ≤ T
 *
 * @param given.subjectDepth *Z*, to be sharp, mm; above 0 and finite
 * @param given.depthOfField *T*, of one frame, mm; above 0 and finite
 * @param given.overlap share of *T* that neighbouring frames have in common; below 1, negative where gaps are left
 * @returns *n*, a whole number. The last frame mostly reaches past the subject.
 * @throws OutOfRange for a depth that is not finite and above zero, and for an overlap of 1 or more
 *
 * Assumes frames of the same depth. On a focusing ring the depth changes from frame to frame: `focus-ring-plan.ts` adds them up.
 * Source: the first frame covers T, each further one T (1 − overlap). Derived in [README](README.md#frames).
 *
 * @example frameCount({ subjectDepth: 5, depthOfField: 0.5, overlap: 0.25 }) // 13
 */
export function frameCount({ subjectDepth, depthOfField, overlap }: Named<Inputs>): number {
  const step = frameStep({ depthOfField, overlap });
  const beyondFirst = Math.max(0, requirePositive('subject-depth', subjectDepth) - depthOfField);
  return 1 + Math.max(0, Math.ceil(beyondFirst / step - rounding));
}

export const frameCountFormula = {
  gives: 'frame-count',
  from: ['subject-depth', 'depth-of-field', 'overlap'],
  tex: String.raw`\q{frame-count} = 1 + \left\lceil \frac{\max\left(0, \q{subject-depth} - \q{depth-of-field}\right)}{\q{depth-of-field}\left(1 - \q{overlap}\right)} \right\rceil`,
  evaluate: frameCount,
  says: 'Half the depth of field, about twice the frames.',
  source: 'derived in core/stack/README.md#frames',
  checkedBy: ['common-practice-exposure', 'overlapping-photographs'],
} as const satisfies Formula<Inputs>;
