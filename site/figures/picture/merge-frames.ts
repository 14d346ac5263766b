import { estimateScale } from '#core/picture/merge/estimate-scale.ts';
import { Merge } from '#core/picture/merge/merge.ts';
import { narrowestOf, scaleOf } from '#core/picture/merge/scale-of.ts';
import { stackViews } from '#core/picture/merge/stack-views.ts';
import type { Picture } from '#core/picture/picture.ts';
import { renderSteps } from '#core/picture/render.ts';
import type { Scene } from '#core/picture/scene.ts';
import type { View } from '#core/picture/view.ts';
import type { Fineness } from './job.ts';
import type { StackJob } from './stack-job.ts';

/** A merged stack, or one frame of it, and the camera whose scale it has. */
export interface Merged {
  readonly picture: Picture;
  readonly view: View;
}

/**
 * Takes the frames of a stack one after the other and merges each into what is there: memory for one, however many there are.
 *
 * The frame that takes in least of the subject, whose rim all others reach, comes first, and the others are brought to its scale, or left as they are.
 *
 * @throws what `stackViews` throws, and RangeError in words where every frame is lost
 */
export function* mergeFrames(
  scene: Scene,
  view: View,
  stack: StackJob,
  { slices, atOnce }: Fineness,
): Generator<number, Merged> {
  const planned = stackViews(view, stack);
  if (stack.only !== undefined) {
    const only = planned[Math.min(planned.length - 1, stack.only)]!;
    return { picture: yield* renderSteps(scene, only, { slices }), view: only };
  }
  const taken = planned.slice(0, stack.taken).filter((_, index) => !stack.lost.includes(index));
  if (taken.length === 0) throw new RangeError('Every frame of the stack is lost, so there is nothing to merge.');
  const reference = narrowestOf(taken);
  if (atOnce) {
    const sharpAt = taken.map(({ focusHeight }) => focusHeight);
    return { picture: yield* renderSteps(scene, reference, { slices, sharpAt }), view: reference };
  }
  const inOrder = reference === taken[0] ? taken : [...taken].reverse();

  const merge = new Merge(view.columns, view.rows, view.colour ? 3 : 1);
  let before: { readonly picture: Picture; readonly scale: number } | undefined;
  for (const [index, frame] of inOrder.entries()) {
    const steps = renderSteps(scene, frame, { slices });
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield (index + step.value) / inOrder.length;
    const picture = step.value;
    const scale: number = before ? scaleIn(stack.scale, { picture, frame, reference, before }) : 1;
    merge.add(picture, scale);
    before = { picture, scale };
  }
  return { picture: merge.result(), view: reference };
}

/** How many times larger a detail is in a frame than in the first one. Estimates are made from one frame to the next, which have most in common. */
function scaleIn(
  how: StackJob['scale'],
  given: {
    readonly picture: Picture;
    readonly frame: View;
    readonly reference: View;
    readonly before: { readonly picture: Picture; readonly scale: number };
  },
): number {
  if (how === 'uncorrected') return 1;
  if (how === 'known') return scaleOf(given.frame, given.reference);
  return given.before.scale * estimateScale(given.picture, given.before.picture);
}
