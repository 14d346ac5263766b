import { step } from '#core/quantity/answers-from.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { focusRingPlan } from '#core/stack/focus-ring-plan.ts';
import { scaleBetweenFocusSettings } from '#core/stack/scale-between-focus-settings.ts';

/** A stack of more frames is still counted on the rail, but not frame by frame on the ring, and is not drawn. */
export const mostOnRing = 400;

/** A frame's sharp slab, mm from the nearest part of the subject. */
export interface Slab {
  readonly near: number;
  readonly plane: number;
  readonly far: number;
}

/** How far the sharp plane goes from each frame to the next, mm. */
export function stepsBetween(frames: readonly Slab[]): readonly number[] {
  return frames.slice(1).map(({ plane }, index) => plane - frames[index]!.plane);
}

/** What a stack on the focus ring follows from. */
export const ofRing = [
  'focal-length',
  'f-number',
  'magnification',
  'pupil-magnification',
  'circle-of-confusion',
  'subject-depth',
  'overlap',
] as const;

/** The stack on the focus ring, beside one of so many frames on the rail. The camera stands; the steps are as uneven as the depths. */
export const onRing = step({
  from: ['frame-count', ...ofRing],
  gives: ['frame-count', 'frame-step', 'least.frame-step', 'most.frame-step', 'second.magnification', 'stack-travel'],
  evaluate({ frameCount, ...stack }) {
    // One frame that shows it all on the rail does so on the ring.
    if (frameCount === 1) return { frameCount, stackTravel: 0 };
    if (frameCount > mostOnRing) throw new OutOfRange('frame-count', frameCount, `at most ${mostOnRing}`);
    const frames = focusRingPlan(stack);
    if (frames.length === 1) return { frameCount: 1, stackTravel: 0 };
    const steps = stepsBetween(frames);
    return {
      frameCount: frames.length,
      leastFrameStep: Math.min(...steps),
      mostFrameStep: Math.max(...steps),
      secondMagnification: frames[1]!.magnification,
      stackTravel: 0,
    };
  },
});

/** From the first frame on the ring to the second, by how much a detail changes its size. */
export const turnedOnce = step({
  from: ['focal-length', 'pupil-magnification', 'magnification', 'second.magnification'],
  gives: ['scale-change'],
  evaluate: ({ magnification: first, secondMagnification: second, ...lens }) => ({
    scaleChange: Math.abs(scaleBetweenFocusSettings({ ...lens, first, second }) - 1),
  }),
});

type Stack = Named<(typeof ofRing)[number] | 'frame-count' | 'near-limit' | 'far-limit'>;

/** The slabs of the stack as it is taken, on a ring that reaches; none where there are more than can be drawn, or no stack at all. */
export function slabsOf(stack: Stack, frameStep: number | undefined, isOnRing: boolean): readonly Slab[] {
  const { frameCount, nearLimit, farLimit, subjectDepth } = stack;
  if (frameStep === undefined || frameCount > mostOnRing) return [];
  if (isOnRing) return focusRingPlan(stack).map((frame) => ({ ...frame, far: Math.min(frame.far, subjectDepth) }));
  return Array.from({ length: frameCount }, (_, index) => {
    const plane = nearLimit + index * frameStep;
    return { near: plane - nearLimit, plane, far: plane + farLimit };
  });
}
