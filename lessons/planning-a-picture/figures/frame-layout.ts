import type { Area } from './plan-areas.ts';

/** Width to height of the picture. */
const shape = 1.5;

/** Pixels: the picture with the subject in it, below a line of words. */
export function frameLayout(frameFill: number, { x, y, width, height, text, small }: Area) {
  const wordsY = y + 1.15 * text;
  const top = y + 1.6 * text;
  /** Below it a dimension. */
  const bottom = y + height - 1.9 * small;
  const across = Math.max(24, Math.min(width - 1.8 * text, shape * (bottom - top)));
  const frame = { x: x + 0.9 * text, y: top, width: across, height: across / shape };
  const centre = { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
  const half = (frameFill * frame.width) / 2;
  return {
    wordsX: x + 6,
    wordsY,
    frame,
    centre,
    half,
    subject: { rx: half, ry: Math.min(0.42 * frame.height, 0.7 * half) },
    /** What the width of the subject in the picture comes to where its edge is pulled to. */
    fillAt: (pixelsFromMiddle: number) => (2 * pixelsFromMiddle) / frame.width,
  };
}
