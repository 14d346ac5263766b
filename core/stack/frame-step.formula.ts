import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireOverlap } from './overlap.ts';

type Inputs = 'depth-of-field' | 'overlap';

/**
 * How far to move between the frames of a stack.
 *
 * Δ = T (1 − overlap)
 *
 * @param given.depthOfField *T*, of one frame, mm; above 0 and finite
 * @param given.overlap share of *T* that neighbouring frames have in common; below 1, negative where gaps are left
 * @returns *Δ*, mm along the axis. With an overlap below zero more than T, and a blurred slice is left between any two frames.
 * @throws OutOfRange for a depth that is not finite and above zero, and for an overlap of 1 or more, with which a stack gets
 *   nowhere
 *
 * Assumes frames of the same depth: a rail, or a few steps of a focusing ring.
 * Source: definition of the overlap. Derived in [README](README.md#step).
 *
 * @example frameStep({ depthOfField: 0.5, overlap: 0.25 }) // 0.375
 */
export function frameStep({ depthOfField, overlap }: Named<Inputs>): number {
  requirePositive('depth-of-field', depthOfField);
  return depthOfField * (1 - requireOverlap(overlap));
}

export const frameStepFormula = {
  gives: 'frame-step',
  from: ['depth-of-field', 'overlap'],
  tex: String.raw`\q{frame-step} = \q{depth-of-field}\left(1 - \q{overlap}\right)`,
  evaluate: frameStep,
  says: 'Each frame begins where the last one ends, less the part they share.',
  source: 'definition of the overlap',
  checkedBy: ['overlapping-photographs'],
} as const satisfies Formula<Inputs>;
