import { scaleAt, type View } from '../view.ts';

/**
 * How many times larger a detail at a height is in one frame than in another. Exact.
 *
 * m u/(u + δ) of the one over that of the other, δ from its sharp plane to the detail, away from the lens
 *
 * @param view of the frame
 * @param reference of the frame to whose scale others are brought
 * @param atHeight of the detail, mm in the scene; the frame's own sharp plane if absent, where its details are worth most
 * @returns a ratio, what `Merge.add` and `resampled` take. Details at other heights have another: no scale suits a whole frame quite.
 * @throws OutOfRange for a detail that lies behind an entrance pupil
 *
 * Derived in [README](README.md#scale).
 *
 * @example scaleOf(second, first) // 1.01 for a step of 1 mm on a rail at u = 100 mm
 */
export function scaleOf(view: View, reference: View, atHeight = view.focusHeight): number {
  return scaleAt(view, atHeight) / scaleAt(reference, atHeight);
}

/**
 * The frame into which all others can be brought without lacking anything at the rim: that which shows least of the subject.
 *
 * @param views of a stack; at least one
 * @returns one of them: the last on a rail, the first or last on a ring
 * @throws RangeError for none
 */
export function narrowestOf(views: readonly View[]): View {
  let narrowest = views[0];
  if (!narrowest) throw new RangeError('a stack of no frames has no narrowest one; at least one frame is needed');
  for (const view of views) if (scaleOf(view, narrowest) > 1) narrowest = view;
  return narrowest;
}
