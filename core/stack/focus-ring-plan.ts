import { coneOfLens } from '#core/depth/cone.ts';
import { focusedPlan, type FocusedFrame } from './focused-plan.ts';
import { magnificationAfterStep } from './magnification-after-step.ts';

export type { FocusedFrame };

/** A stack taken by racking a lens as a whole, the camera standing still, from near to far. */
export interface FocusRingStack {
  /** *f*, mm, above 0 */
  readonly focalLength: number;
  /** *N*, above 0; the pupil keeps its diameter f/N */
  readonly fNumber: number;
  /** *P*, the lens as it stands, above 0 */
  readonly pupilMagnification: number;
  /** *c*, mm, above 0 */
  readonly circleOfConfusion: number;
  /** *m*, in the sharp plane of the first and nearest frame, above 0; its near limit lies on the nearest part of the subject */
  readonly magnification: number;
  /** *Z*, mm, above 0 and finite */
  readonly subjectDepth: number;
  /** Share of a frame's depth that the next one has in common with it; below 1 */
  readonly overlap: number;
}

/**
 * The frames of a stack on a focusing ring. Each has its own magnification and depth, so they are counted one by one.
 *
 * @param stack see {@link FocusRingStack}
 * @returns the frames from near to far; the last reaches the far end of the subject or past it
 * @throws OutOfRange for what lies outside, for a first frame of infinite depth, and for more than 10000 frames
 *
 * Assumes a lens that moves as a whole. For one that focuses inside, or a chain, give `focusedPlan` the cones of its settings.
 * See [README](README.md#focusing-by-the-ring).
 */
export function focusRingPlan(stack: FocusRingStack): readonly FocusedFrame[] {
  const { circleOfConfusion, subjectDepth, overlap } = stack;
  const coneAfter = (step: number) =>
    coneOfLens(step === 0 ? stack : { ...stack, magnification: magnificationAfterStep({ ...stack, step }) });
  return focusedPlan({ coneAfter, circleOfConfusion, subjectDepth, overlap });
}
