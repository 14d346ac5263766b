import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** Lengths along the axis, mm. */
export interface SetUp {
  readonly flashDistance: number;
  readonly backgroundDistance: number;
  readonly rimToSubject: number;
}

/** Sizes of what is drawn, mm: across the axis, half. */
const [halfHead, halfRim] = [30, 32];

/**
 * Where all stands on the sheet, pixels: camera to the left, background to the right, flash above the lens, two grey patches below. A
 * background so far behind that the rest would shrink to nothing stands at the edge behind a broken axis. A scale that is *held* while
 * the hand drags stays.
 */
export function setUpLayout(
  { flashDistance, backgroundDistance, rimToSubject }: SetUp,
  box: SheetBox,
  held?: DrawingScale,
) {
  const { width, height, text, small } = box;
  const [left, right] = [1.6 * text, width - 1.6 * text];
  /** Lines of dimensions stand above, rule and patches below. */
  const top = 1.9 * small + 0.3 * text;
  const foot = 2.2 * small;
  const ruleY = top + 0.44 * (height - top - foot);
  const room = right - left;
  const shownBehind = Math.min(backgroundDistance, 3 * flashDistance);
  const scale = held ?? drawingScale(flashDistance + shownBehind, 0.88 * room);
  const mm = (length: number) => length * scale.pixelsPerMillimetre;
  const spare = room - mm(flashDistance) - mm(shownBehind);
  const subjectX = Math.min(right, left + Math.max(0.45 * Math.max(0, spare), 0.06 * room) + mm(flashDistance));
  const isFar = subjectX + mm(backgroundDistance) > right;
  const backgroundX = isFar ? right : subjectX + mm(backgroundDistance);
  const flashX = Math.max(4, subjectX - mm(flashDistance));
  const rimX = subjectX - mm(rimToSubject);
  const deep = ruleY - 1.7 * small - top;
  const axisY = top + 0.62 * deep;
  const halfLens = Math.min(Math.max(9, mm(halfRim)), 0.36 * deep);
  const headHalf = Math.min(Math.max(7, mm(halfHead)), 0.16 * deep);
  const headY = top + 0.2 * deep;
  const spread = Math.min(0.34 * deep, 6 + (backgroundX - subjectX) * 0.3);
  const patchTop = ruleY + 1.9 * text;
  const patchBottom = height - foot - 1.7 * text;
  return {
    scale,
    top,
    ruleY,
    axisY,
    subjectX,
    backgroundX,
    isFar,
    flashX,
    headY,
    headHalf,
    rimX,
    halfLens,
    deep,
    /** Light of the flash on to the background. */
    light: `M${flashX} ${headY}L${backgroundX} ${axisY - spread}V${axisY + spread}z`,
    lens:
      rimX > 6
        ? `M${rimX} ${axisY - halfLens}H0M${rimX} ${axisY + halfLens}H0M${rimX} ${axisY - halfLens}V${axisY + halfLens}`
        : '',
    break: isFar ? zigzag(0.5 * (subjectX + backgroundX), axisY) : '',
    patches: {
      top: patchTop,
      height: Math.max(10, patchBottom - patchTop),
      gap: 0.6 * text,
      left: 6,
      width: width - 12,
    },
  };
}

const zigzag = (x: number, y: number) => `M${x - 3} ${y + 12}l-5 -10l8 -4l-5 -10M${x + 4} ${y + 12}l-5 -10l8 -4l-5 -10`;
