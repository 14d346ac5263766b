import { renderPicture } from '#core/picture/render.ts';
import { rulerLying, type RulerPlan } from '#core/picture/subjects/ruler.ts';
import { fieldOf, type View } from '#core/picture/view.ts';
import { greyOfLight, type GreyPhotograph } from './photograph.ts';

/** A ruler in front of a camera, for measurements whose truth is known. */
export interface RulerPicture extends Omit<RulerPlan, 'reach'> {
  /** The camera; `focusHeight` is made so that it is sharp *focus* mm behind the middle of the ruler. */
  readonly view: Omit<View, 'focusHeight'>;
  readonly focus?: number;
}

/**
 * A photograph of a ruler, rendered through the lens with blur and photon noise.
 *
 * The ruler's zero is in the middle of the picture; magnification is that of the sharp plane, on the axis.
 *
 * @throws OutOfRange, RangeError as `renderPicture` does
 */
export function rulerPicture({ view: camera, focus = 0, ...plan }: RulerPicture): GreyPhotograph {
  const { columns, rows, pitch, magnification } = camera;
  // The far end of a leaning ruler is seen smaller: what is drawn reaches beyond what a flat one would need.
  const reach = (0.9 * Math.hypot(columns, rows) * pitch) / magnification / Math.cos(plan.tilt);
  const subject = rulerLying({ ...plan, reach });
  const view = { ...camera, focusHeight: subject.depth / 2 - focus };
  const field = fieldOf(view, subject.depth);
  const fine = (0.5 * pitch) / magnification;
  const scene = subject.scene({
    columns: Math.min(8192, Math.ceil(field.width / fine)),
    rows: Math.min(8192, Math.ceil(field.height / fine)),
    pitch: fine,
    seed: 1,
  });
  const { light } = renderPicture(scene, view, { slices: plan.tilt === 0 ? 2 : 64 });
  return { columns, rows, grey: Uint8Array.from(light, greyOfLight) };
}
