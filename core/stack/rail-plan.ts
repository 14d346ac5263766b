import { requirePositive } from '#core/quantity/errors.ts';
import { frameCount } from './frame-count.formula.ts';
import { frameStep } from './frame-step.formula.ts';
import { stackTravel } from './stack-travel.formula.ts';

/** What a stack on a rail is to cover, and with what frames. */
export interface RailStack {
  /** From the sharp plane towards the lens, mm, above 0 */
  readonly nearLimit: number;
  /** From the sharp plane away from the lens, mm, above 0 and finite */
  readonly farLimit: number;
  /** *Z*, mm, above 0 and finite */
  readonly subjectDepth: number;
  /** Share of one frame's depth that neighbours have in common; below 1 */
  readonly overlap: number;
}

/** A stack on a rail, worked out. Lengths in mm along the axis. */
export interface RailPlan {
  readonly frameStep: number;
  readonly frameCount: number;
  /** From the first frame to the last. */
  readonly travel: number;
  /** First sharp plane, counted from the nearest part of the subject. */
  readonly firstPlane: number;
  /** Unsharp slice between neighbouring frames; 0 with an overlap of 0 or more. */
  readonly gap: number;
  /** How far the last frame reaches past the farthest part of the subject. */
  readonly spare: number;
}

/**
 * A stack taken by moving the camera along a rail from near to far: every frame keeps m, and with it its depth.
 *
 * @param stack see {@link RailStack}
 * @throws OutOfRange for anything not finite and above zero, and for an overlap of 1 or more
 *
 * See [README](README.md#frames).
 */
export function railPlan({ nearLimit, farLimit, subjectDepth, overlap }: RailStack): RailPlan {
  requirePositive('near-limit', nearLimit);
  requirePositive('far-limit', farLimit);
  const depthOfField = nearLimit + farLimit;
  const step = frameStep({ depthOfField, overlap });
  const count = frameCount({ subjectDepth, depthOfField, overlap });
  const travel = stackTravel({ frameCount: count, frameStep: step });
  return {
    frameStep: step,
    frameCount: count,
    travel,
    firstPlane: nearLimit,
    gap: Math.max(0, step - depthOfField),
    spare: travel + depthOfField - subjectDepth,
  };
}
