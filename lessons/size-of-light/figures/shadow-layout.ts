import { seenPastEdge, seenPastNeedle } from '#core/light/seen-past-edge.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { greyLevel } from '#site/figures/grey/grey.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** A light above a leaf and an edge between them; mm. No penumbra where the edge is not below the light. */
export interface Shadow {
  readonly sourceSize: number;
  readonly flashDistance: number;
  readonly edgeHeight: number;
  readonly penumbra: number | undefined;
  /** How thick the needle is. */
  readonly needle: number;
}

/** The leaf reflects so much, a share. */
const leaf = 0.75;
/** How much of the leaf the strips show as a rule, mm. */
const usuallyShown = 12;

/** The level of a leaf on which so much of the light shines. */
export const leafLevel = (share: number) => {
  const level = greyLevel(leaf * share, 0);
  return `rgb(${level} ${level} ${level})`;
};

/**
 * Where everything stands on the sheet, pixels: light, edge and leaf from the side, one scale both ways; beside that, below it on a narrow
 * sheet, the leaf from above in two strips, enlarged. A scale that is *held* while the hand drags stays.
 */
export function shadowLayout(given: Shadow, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  const { sourceSize, flashDistance, edgeHeight, penumbra } = given;
  const isWide = width > 1.25 * height;
  const foot = 3.9 * small;
  const lower = isWide ? { left: 0.4 * width, right: width - 8 } : { left: 8, right: width - 8 };
  const lowerTop = isWide ? 0.5 * small : 0.5 * height;
  const lowerBottom = height - foot;
  // From the top: words, the light as it is seen, the rim’s dimension, a strip, words, a strip.
  const eyes = Math.min(1.3 * text, 0.055 * (lowerBottom - lowerTop) + 0.2 * text);
  const rest = lowerBottom - lowerTop - 1.4 * small - 2 * eyes - 2.3 * small - 1.6 * small;
  const stripHeight = Math.max(0.9 * text, 0.46 * rest);
  const eyesY = lowerTop + 1.4 * small + eyes;
  const edgeTop = eyesY + eyes + 2.3 * small;
  const needleTop = edgeTop + stripHeight + 1.6 * small;
  const middle = (lower.left + lower.right) / 2;

  const side = isWide
    ? { left: 8, right: 0.385 * width, leafY: height - 4.4 * small }
    : { left: 8, right: width - 8, leafY: 0.5 * height - 0.9 * small };
  const lightTop = 2.2 * small + 14;
  const lightX = side.left + 0.38 * (side.right - side.left);
  const reach = Math.min(
    (0.5 * (side.right - side.left)) / sourceSize,
    (side.leafY - lightTop) / Math.max(flashDistance, edgeHeight),
  );
  const scale = held ?? fittingScale(box, reach);
  const mm = scale.pixelsPerMillimetre;
  const inside = (y: number) => Math.max(4, y);
  const lampY = inside(side.leafY - flashDistance * mm);
  const half = Math.min(0.5 * (side.right - side.left), (sourceSize / 2) * mm);
  const edgeY = inside(side.leafY - edgeHeight * mm);
  const shown = penumbra === undefined || penumbra < 0.85 * usuallyShown ? usuallyShown : penumbra / 0.85;
  const strip = fittingScale(box, (lower.right - lower.left) / shown);
  const rim = penumbra === undefined ? 0 : penumbra * strip.pixelsPerMillimetre;
  const halfRim = Math.min(((penumbra ?? 0) * mm) / 2, side.right - side.left);
  const ray = (end: -1 | 1) =>
    `M${(lightX + end * half).toFixed(1)} ${lampY.toFixed(1)}L${(lightX - end * halfRim).toFixed(1)} ${side.leafY}`;
  return {
    isWide,
    scale,
    strip,
    side,
    lightX,
    lampY,
    half,
    edgeY,
    edgeLeft: side.left,
    rays: penumbra === undefined ? '' : ray(-1) + ray(1),
    cone:
      penumbra === undefined
        ? ''
        : `M${lightX - halfRim} ${side.leafY}L${lightX} ${edgeY}L${lightX + halfRim} ${side.leafY}z`,
    middle,
    rim,
    eyes,
    eyesY,
    wordsY: lowerTop + small,
    strips: { left: lower.left, width: lower.right - lower.left, edgeTop, needleTop, height: stripHeight },
    ruleY: height - 1,
  };
}

const stopCount = 32;

/** Colours along the two strips, by their place from the left, 0 to 1. */
export function shades(given: Shadow, width: number, pixelsPerMillimetre: number) {
  const { penumbra, needle } = given;
  if (penumbra === undefined) return { edge: [], needle: [] };
  const places = (from: number, to: number) =>
    Array.from({ length: stopCount + 1 }, (_, index) => from + ((to - from) * index) / stopCount);
  const at = (place: number) => Math.min(1, Math.max(0, 0.5 + (place * pixelsPerMillimetre) / width));
  const stops = (from: number, to: number, seen: (place: number) => number) =>
    places(from, to).map((place) => ({ at: Number(at(place).toFixed(5)), colour: leafLevel(seen(place)) }));
  const side = (needle / 2) * (given.flashDistance / (given.flashDistance - given.edgeHeight));
  const reach = side + penumbra / 2;
  const halfShown = width / pixelsPerMillimetre / 2;
  return {
    edge: stops(-Math.min(halfShown, penumbra / 2), Math.min(halfShown, penumbra / 2), (place) =>
      seenPastEdge(given, place),
    ),
    needle: stops(-Math.min(halfShown, reach), Math.min(halfShown, reach), (place) =>
      seenPastNeedle(given, needle, place),
    ),
  };
}

/** What is hidden of a round light, at a place of the penumbra from its dark end, 0, to its lit one, 1: a path of a disc about the origin. */
export function hiddenPart(part: number, radius: number): string {
  // The edge comes in from the left: so much of the width is hidden there.
  const cut = radius * (1 - 2 * part);
  const up = Math.sqrt(Math.max(0, radius * radius - cut * cut));
  if (part <= 0)
    return `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`;
  if (part >= 1) return '';
  return `M${cut} ${-up}A${radius} ${radius} 0 ${part < 0.5 ? 1 : 0} 0 ${cut} ${up}z`;
}
