import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { levelPitch } from '#site/figures/dimension/stack.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** A subject in the frame and along the axis, mm along the axis from its nearest part. */
export interface Size {
  readonly frameFill: number;
  readonly subjectDepth: number;
  readonly nearLimit: number;
  /** Infinite where there is no far end. */
  readonly depthOfField: number;
  readonly frameStep: number;
  readonly frameCount: number;
  /** Of these, done in time. */
  readonly taken: number;
}

/** More slabs than this are one grey. */
export const mostSlabs = 120;

/** Width to height of the picture. */
const shape = 1.5;

/** Pixels: on the left the picture with the subject in it, on the right the subject from the side, the lens on the right of it, and the slabs of the frames. */
export function sizeLayout(size: Size, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  const top = 1.6 * text + (levelPitch + 0.9) * small;
  /** Below it a dimension, and the rule. */
  const bottom = height - (levelPitch + 4.2) * small;
  const middle = 0.46 * width;
  const frameWidth = Math.max(40, Math.min(middle - 1.6 * text, shape * (bottom - top)));
  const frame = {
    x: 0.5 * (middle - frameWidth) + 0.1 * text,
    y: 0.5 * (top + bottom) - frameWidth / shape / 2,
    width: frameWidth,
    height: frameWidth / shape,
  };
  const centre = { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
  const half = (size.frameFill * frame.width) / 2;

  const [left, right] = [middle + 1.4 * text, width - 1.8 * text];
  const scale = held ?? fittingScale(box, (0.9 * (right - left)) / size.subjectDepth);
  const pixels = scale.pixelsPerMillimetre;
  const nearX = right - 0.02 * (right - left);
  const x = (depth: number) => nearX - depth * pixels;
  const clamp = (at: number) => Math.min(right, Math.max(left, at));
  const count = size.frameCount <= mostSlabs ? size.frameCount : 0;
  const band = (index: number) => {
    const near = index * size.frameStep;
    const to = clamp(x(near + size.depthOfField));
    return `M${clamp(x(near)).toFixed(2)} ${top}V${bottom}H${to.toFixed(2)}V${top}z`;
  };
  const bands = (from: number, to: number, every = 1, first = 0) =>
    Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index)
      .filter((index) => index % every === first)
      .map(band)
      .join('');
  const taken = Math.min(count, size.taken);
  const farX = clamp(x(size.subjectDepth));
  const axisY = 0.5 * (top + bottom);
  const tall = 0.4 * (bottom - top);
  return {
    top,
    bottom,
    frame,
    centre,
    half,
    subject: { rx: half, ry: Math.min(0.42 * frame.height, 0.7 * half) },
    left,
    right,
    scale,
    nearX,
    farX,
    axisY,
    one: { from: clamp(x(size.depthOfField)), to: nearX },
    odd: bands(0, taken, 2, 0),
    even: bands(0, taken, 2, 1),
    lost: bands(taken, count),
    /** As a mound, its tip towards the lens. */
    mound: `M${nearX} ${axisY}C${nearX} ${axisY - tall} ${farX} ${axisY - tall} ${farX} ${axisY - tall}V${axisY + tall}C${farX} ${axisY + tall} ${nearX} ${axisY + tall} ${nearX} ${axisY}z`,
    /** What the width of the subject in the picture comes to where its edge is pulled to. */
    fillAt: (pixelsFromMiddle: number) => (2 * pixelsFromMiddle) / frame.width,
  };
}
