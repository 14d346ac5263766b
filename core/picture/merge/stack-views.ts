import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import { magnificationAfterStep } from '#core/stack/magnification-after-step.ts';
import type { View } from '../view.ts';

/** How a stack is taken: plain numbers, whatever planned them. */
export interface StackPlan {
  /** *n*, a whole number from 1 to 2000 */
  readonly frameCount: number;
  /**
   * *Δ*, of the sharp plane from one frame to the next, away from the lens, mm on the subject; above 0; one frame takes none. Where the steps
   * differ, one for each frame but the last.
   */
  readonly frameStep: number | readonly number[];
  /** Of the first sharp plane, mm in the scene; may lie above its highest place */
  readonly firstHeight: number;
  /** `rail`: the camera moves. `focus-ring`: it stands still and the lens moves as a whole. */
  readonly by: 'rail' | 'focus-ring';
  /** *f*, mm, for `focus-ring`; u/(1/m + 1/P) of the view if absent */
  readonly focalLength?: number;
}

const mostFrames = 2000;

/**
 * The camera of each frame of a stack, from near to far.
 *
 * By `rail` frame k is the first one with its sharp plane z_k deeper, k Δ or the sum of k steps: m and u stay. By `focus-ring` m + 1/m grows
 * by z_k/f, u by f (1/m_k − 1/m), and N_w with P + m.
 *
 * @param view of the first frame; its focus height is the plan's
 * @param plan see {@link StackPlan}. Frames that are lost are left out of what comes back.
 * @returns a view a frame. The exposure is kept the same, and each frame has noise of its own where the view has any.
 * @throws OutOfRange for a plan that cannot be taken, in words that say what can: above all more than 2000 frames, and a travel that
 *   carries the entrance pupil to the first sharp plane
 *
 * Assumes a rail along the axis, and for `focus-ring` a lens alone, its pupil in front of the subject, that keeps its shape and its iris.
 * Derived in [README](README.md#frames).
 *
 * @example stackViews(view, { frameCount: 3, frameStep: 0.5, firstHeight: 2, by: 'rail' })[2].focusHeight // 1
 */
export function stackViews(view: View, plan: StackPlan): readonly View[] {
  const { frameCount, frameStep, firstHeight, by } = plan;
  if (!(Number.isInteger(frameCount) && frameCount >= 1 && frameCount <= mostFrames))
    throw new OutOfRange(
      'frame-count',
      frameCount,
      `a whole number of frames from 1 to ${mostFrames}; fewer frames with a larger step still work`,
    );
  const travels = travelsOf(frameCount, frameStep);
  const focusedAfter = by === 'rail' ? () => ({}) : racked(view, plan.focalLength ?? focalLengthOf(view));
  return travels.map((travel, index) => {
    const focused = {
      ...view,
      focusHeight: firstHeight - travel,
      ...(index > 0 && focusedAfter(travel)),
      ...(view.electronsAtWhite !== undefined && { seed: (view.seed ?? 0) + index }),
    };
    if (focused.entrancePupilDistance > 0 && focused.entrancePupilDistance <= travel)
      throw new OutOfRange(
        'frame-step',
        travel - travels[index - 1]!,
        index === 1
          ? 'a step that keeps the lens off the subject; a smaller one still works'
          : `a step that keeps the lens off the subject; ${index} frames of it still work, or smaller steps`,
      );
    return focused;
  });
}

/** How far each sharp plane lies behind the first, mm. */
function travelsOf(frameCount: number, frameStep: number | readonly number[]): readonly number[] {
  if (typeof frameStep === 'number') {
    if (frameCount > 1) requirePositive('frame-step', frameStep);
    return Array.from({ length: frameCount }, (_, index) => (index === 0 ? 0 : index * frameStep));
  }
  if (frameStep.length !== frameCount - 1)
    throw new OutOfRange('frame-step', frameStep.length, `a step from each of the ${frameCount} frames to the next`);
  let travel = 0;
  return [0, ...frameStep.map((step) => (travel += requirePositive('frame-step', step)))];
}

function focalLengthOf({ entrancePupilDistance, magnification, pupilMagnification }: View): number {
  return entrancePupilDistance / (1 / magnification + 1 / pupilMagnification);
}

/** What changes of a view when its lens, moved as a whole, has carried the sharp plane on by a travel. */
function racked(view: View, focalLength: number) {
  requirePositive('entrance-pupil-distance', view.entrancePupilDistance);
  const { magnification: first, effectiveFNumber, pupilMagnification, entrancePupilDistance } = view;
  return (travel: number) => {
    const magnification = magnificationAfterStep({ focalLength, magnification: first, step: travel });
    return {
      magnification,
      entrancePupilDistance: entrancePupilDistance + focalLength * (1 / magnification - 1 / first),
      effectiveFNumber: (effectiveFNumber * (pupilMagnification + magnification)) / (pupilMagnification + first),
    };
  };
}
