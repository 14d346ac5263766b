import { levelPitch } from '#site/figures/dimension/stack.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import type { Area } from './plan-areas.ts';

/** A subject along the axis from its nearest part, and what frames hold of it, mm. */
export interface Slabs {
  readonly subjectDepth: number;
  /** Infinite where there is no far end; undefined where nothing is sharp. */
  readonly depthOfField: number | undefined;
  readonly frameStep: number;
  readonly frameCount: number;
  /** Of these, done in time. */
  readonly taken: number;
}

/** More slabs than this are one grey. */
export const mostSlabs = 120;

/** Whole lengths that a bar may stand for, so that it is between a quarter and two thirds of the width. */
function barFor(millimetres: number): number {
  const power = 10 ** Math.floor(Math.log10(millimetres));
  return Number(([5, 2, 1].find((step) => step * power <= millimetres)! * power).toPrecision(1));
}

/**
 * Pixels: the subject from the side, its far end left and the lens on the right of it, enlarged until its depth is seen; its slabs one behind the
 * other, first the nearest.
 */
export function slabLayout(slabs: Slabs, { x, y, width, height, text, small, onPaper }: Area, held?: DrawingScale) {
  const wordsY = y + 1.15 * text;
  const top = y + 1.5 * text + (levelPitch + 0.4) * small;
  /** Below it a dimension, and a bar with its length. */
  const bottom = y + height - (levelPitch + 2.1) * small;
  const [left, right] = [x + 0.9 * text, x + width - 1.4 * text];
  const scale = held ?? fittingScale({ onPaper: onPaper ?? false }, (0.84 * (right - left)) / slabs.subjectDepth);
  const pixels = scale.pixelsPerMillimetre;
  const nearX = right;
  const at = (depth: number) => Math.min(right, Math.max(left, nearX - depth * pixels));
  const band = (from: number, to: number) =>
    `M${at(from).toFixed(2)} ${top.toFixed(1)}V${bottom.toFixed(1)}H${at(to).toFixed(2)}V${top.toFixed(1)}z`;
  const { depthOfField, frameStep, frameCount } = slabs;
  const count = depthOfField === undefined || frameCount > mostSlabs ? 0 : frameCount;
  const taken = Math.min(count, slabs.taken);
  const bands = (from: number, to: number, odd?: number) =>
    Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index)
      .filter((index) => odd === undefined || index % 2 === odd)
      .map((index) => band(index * frameStep, index * frameStep + depthOfField!))
      .join('');
  const farX = at(slabs.subjectDepth);
  const axisY = 0.5 * (top + bottom);
  const tall = 0.38 * (bottom - top);
  const bar = barFor((0.6 * (right - left)) / pixels);
  return {
    top,
    bottom,
    left,
    right,
    wordsY,
    wordsX: x + 6,
    scale,
    nearX,
    farX,
    axisY,
    /** The first slab; none where nothing is sharp. */
    one: depthOfField === undefined ? undefined : { from: at(depthOfField), to: nearX, path: band(0, depthOfField) },
    odd: bands(1, taken, 1),
    even: bands(1, taken, 0),
    lost: bands(Math.max(1, taken), count),
    /** What the first leaves over, until it is asked how that is taken. */
    rest:
      depthOfField === undefined || depthOfField >= slabs.subjectDepth ? '' : band(depthOfField, slabs.subjectDepth),
    /** As a mound, its tip towards the lens. */
    mound: `M${nearX} ${axisY}C${nearX} ${axisY - tall} ${farX} ${axisY - tall} ${farX} ${axisY - tall}V${axisY + tall}C${farX} ${axisY + tall} ${nearX} ${axisY + tall} ${nearX} ${axisY}z`,
    bar: { length: bar, path: barPath(left, y + height - 0.35 * small, bar * pixels), y: y + height - 0.75 * small },
  };
}

const barPath = (x: number, y: number, length: number) => `M${x} ${y - 3}v6M${x} ${y}h${length.toFixed(2)}m0 -3v6`;

/** The fullest of *texts* that is no wider than so many pixels; the last where none is. */
export const fitting = (texts: readonly string[], size: number, width: number): string =>
  texts.find((text) => textWidth(text, size) <= width) ?? texts.at(-1)!;
