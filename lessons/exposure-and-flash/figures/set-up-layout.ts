import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { levelPitch } from '#site/figures/dimension/stack.ts';
import { drawingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { titleHeight } from '#site/figures/sheet/title-block.ts';

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
  const top = (levelPitch + 1.5) * small;
  const foot = (box.onPaper ? 0.6 : 2.2) * small;
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
  // On paper the title stands over the rule, which a reader lays a ruler on; on a screen it stands at the foot.
  const titleY = box.onPaper ? ruleY - 2.1 * small - 3 : height - 3;
  const deep = (box.onPaper ? titleY - titleHeight * small - 4 : ruleY - 1.7 * small) - top;
  const axisY = top + 0.62 * deep;
  const halfLens = Math.min(Math.max(9, mm(halfRim)), 0.36 * deep);
  const headHalf = Math.min(Math.max(7, mm(halfHead)), 0.16 * deep);
  const headY = top + 0.2 * deep;
  const spread = Math.min(0.34 * deep, 6 + (backgroundX - subjectX) * 0.3);
  // The lower ray passes just below the subject, and leaves the drawing at its foot.
  const slope = (axisY + 12 - headY) / Math.max(1, subjectX - flashX);
  const lowest = axisY + 0.38 * deep;
  const leavesX = Math.min(backgroundX, flashX + (lowest - headY) / slope);
  const patchTop = ruleY + 1.9 * text;
  const patchBottom = height - foot - 1.7 * text;
  return {
    scale,
    top,
    ruleY,
    titleY,
    axisY,
    subjectX,
    backgroundX,
    isFar,
    flashX,
    headY,
    headHalf,
    rimX,
    halfLens,
    /** Where the lens’s name stands: in it, or above it where it is too flat and nothing else is there. */
    lensName:
      rimX < 5 * small
        ? undefined
        : halfLens > 1.4 * small
          ? axisY - 0.4 * small
          : flashX > 6 * small
            ? axisY - halfLens - 0.4 * small
            : undefined,
    deep,
    /** Light of the flash on to the background. */
    light: `M${flashX} ${headY}L${backgroundX} ${axisY - spread}V${headY + slope * (leavesX - flashX)}H${leavesX}z`,
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
