import { scaleAt, type View } from '#core/picture/view.ts';

/** A view at life size, f/16 effective, that tests change as they need. */
export const lifeSize: View = {
  magnification: 1,
  effectiveFNumber: 16,
  pupilMagnification: 1,
  entrancePupilDistance: 100,
  focusHeight: 10,
  pitch: 0.002,
  columns: 257,
  rows: 257,
};

/** Pitch of a scene whose samples at a height fall on the pixels of a view one by one. */
export function pitchOnPixels(view: View, height: number): number {
  return view.pitch / scaleAt(view, height);
}
