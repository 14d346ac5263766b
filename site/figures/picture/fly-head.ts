import type { View } from '#core/picture/view.ts';

/** The head of the fly over half the height of a square picture: what that shows of the scene, and the place in focus, mm. */
const seen = { height: 4.4, focusHeight: 1.7 };
const across = 300;

/** The camera on a fly's head, small enough for two pictures side by side. */
export function viewOfFlyHead(
  lens: Pick<View, 'magnification' | 'effectiveFNumber' | 'pupilMagnification' | 'entrancePupilDistance'>,
): View {
  const { focusHeight } = seen;
  const pitch = (lens.magnification * seen.height) / across;
  return { ...lens, focusHeight, pitch, columns: across, rows: across, colour: true };
}
