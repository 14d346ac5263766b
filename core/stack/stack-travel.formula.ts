import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireFrames } from './frames-in-time.ts';

type Inputs = 'frame-count' | 'frame-step';

/**
 * How far the sharp plane travels from the first frame of a stack to the last.
 *
 * travel = (n − 1) Δ
 *
 * @param given.frameCount *n*, at least 1
 * @param given.frameStep *Δ*, mm; above 0
 * @returns mm along the axis; 0 for a single frame. On a rail the camera travels as far.
 * @throws OutOfRange for a count that is not finite or below 1, and a step not finite and above zero
 *
 * Source: counting: one step fewer than frames. Derived in [README](README.md#frames).
 *
 * @example stackTravel({ frameCount: 13, frameStep: 0.375 }) // 4.5
 */
export function stackTravel({ frameCount, frameStep }: Named<Inputs>): number {
  requireFrames(frameCount);
  return (frameCount - 1) * requirePositive('frame-step', frameStep);
}

export const stackTravelFormula = {
  gives: 'stack-travel',
  from: ['frame-count', 'frame-step'],
  tex: String.raw`\q{stack-travel} = \left(\q{frame-count} - 1\right)\q{frame-step}`,
  evaluate: stackTravel,
  says: 'One step fewer than there are frames: four frames, three steps.',
  source: 'counting',
  checkedBy: ['stack-schedules'],
} as const satisfies Formula<Inputs>;
