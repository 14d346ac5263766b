import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { frameStep } from './frame-step.formula.ts';
import { requireFrames } from './frames-in-time.ts';

type Inputs = 'depth-of-field' | 'frame-count' | 'overlap';

/**
 * How deep a subject so many frames hold sharp together.
 *
 * Z = T (1 + (n − 1)(1 − overlap))
 *
 * @param given.depthOfField *T*, of one frame, mm; above 0 and finite
 * @param given.frameCount *n*, frames that are taken; 1 or more
 * @param given.overlap share of *T* that neighbouring frames have in common; from 0, below 1
 * @returns mm, from the near end of the first frame to the far end of the last
 * @throws OutOfRange for a depth that is not finite and above zero, for less than one frame, and for an overlap of 1 or more
 *
 * Assumes frames of the same depth. With a negative overlap it counts the gaps in, too.
 * Source: the first frame holds T, each further one a step more. Derived in [README](README.md#frames).
 *
 * @example depthOfStack({ depthOfField: 0.16, frameCount: 16, overlap: 0.25 }) // 1.96
 */
export function depthOfStack({ depthOfField, frameCount, overlap }: Named<Inputs>): number {
  requirePositive('depth-of-field', depthOfField);
  return depthOfField + (requireFrames(frameCount) - 1) * frameStep({ depthOfField, overlap });
}

export const depthOfStackFormula = {
  gives: 'subject-depth',
  from: ['depth-of-field', 'frame-count', 'overlap'],
  tex: String.raw`\q{subject-depth} = \q{depth-of-field}\left(1 + \left(\q{frame-count} - 1\right)\left(1 - \q{overlap}\right)\right)`,
  evaluate: depthOfStack,
  says: 'What is sharp when time is up: one frame whole, and a step for each of the others.',
  source: 'derived in core/stack/README.md#frames',
  checkedBy: ['frames-and-depths'],
} as const satisfies Formula<Inputs>;
