import type { Area } from './plan-areas.ts';

/** Two sizes alike but for rounding. */
const alike = 1e-4;

/** Width to height of the picture. */
const shape = 1.5;

/**
 * Pixels: the picture with the subject in it, below a line of words.
 *
 * @param frameFill share of the picture's width that is asked for
 * @param given the share that it comes to; undefined where nothing is sharp
 */
export function frameLayout(frameFill: number, given: number | undefined, { x, y, width, height, text, small }: Area) {
  const wordsY = y + 1.15 * text;
  const top = y + 1.6 * text;
  /** Below it a dimension. */
  const bottom = y + height - 1.9 * small;
  const across = Math.max(24, Math.min(width - 1.8 * text, shape * (bottom - top)));
  const frame = { x: x + 0.9 * text, y: top, width: across, height: across / shape };
  const centre = { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
  const halfOf = (fill: number) => (fill * frame.width) / 2;
  /** What does not go in is cut off by the picture's edge. */
  const ellipse = (fill: number) => {
    const rx = halfOf(fill);
    return { rx, ry: fill > 1 ? 0.7 * rx : Math.min(0.42 * frame.height, 0.7 * rx) };
  };
  const isAsAsked = given !== undefined && Math.abs(given / frameFill - 1) < alike;
  return {
    wordsX: x + 6,
    wordsY,
    frame,
    centre,
    half: halfOf(frameFill),
    /** As it comes to; none where nothing is sharp. */
    subject: given === undefined ? undefined : ellipse(given),
    /** As it is asked for, where it comes to something else. */
    asked: isAsAsked ? undefined : ellipse(frameFill),
    /** From the middle to where its width is measured. */
    measured: halfOf(Math.min(1, given ?? frameFill)),
    /** What the width of the subject in the picture comes to where its edge is pulled to. */
    fillAt: (pixelsFromMiddle: number) => (2 * pixelsFromMiddle) / frame.width,
  };
}
