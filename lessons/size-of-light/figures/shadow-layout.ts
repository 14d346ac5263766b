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
 * Where everything stands on the sheet, pixels: above, light, edge and leaf from the side, one scale both ways; below, the leaf from above in
 * two strips, enlarged. A scale that is *held* while the hand drags stays.
 */
export function shadowLayout(given: Shadow, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  const { sourceSize, flashDistance, edgeHeight, penumbra } = given;
  const foot = 3.9 * small;
  const stripHeight = Math.max(1.5 * text, 0.085 * height);
  const needleTop = height - foot - stripHeight;
  const edgeTop = needleTop - stripHeight - 1.5 * text;
  const eyes = Math.max(0.45 * text, Math.min(0.9 * text, 0.025 * height));
  /** The row of lights as they are seen, the dimension below them. */
  const eyesY = edgeTop - 2.3 * text - eyes;
  const leafY = eyesY - eyes - 1.9 * text;
  const lightY = 2.4 * text + 14;
  const middle = 0.5 * width;
  const reach = Math.min((0.76 * width) / sourceSize, (leafY - lightY) / flashDistance);
  const scale = held ?? fittingScale(box, reach);
  const mm = scale.pixelsPerMillimetre;
  const inside = (y: number) => Math.max(4, y);
  const lampY = inside(leafY - flashDistance * mm);
  const half = Math.min(0.5 * width - 4, (sourceSize / 2) * mm);
  const edgeY = inside(leafY - edgeHeight * mm);
  const shown = penumbra === undefined || penumbra < 0.85 * usuallyShown ? usuallyShown : penumbra / 0.85;
  const strip = fittingScale(box, (width - 16) / shown);
  const rim = penumbra === undefined ? 0 : penumbra * strip.pixelsPerMillimetre;
  const line = (side: -1 | 1) =>
    `M${(middle + side * half).toFixed(1)} ${lampY.toFixed(1)}L${(middle - (side * (penumbra ?? 0) * mm) / 2).toFixed(1)} ${leafY}`;
  return {
    scale,
    strip,
    middle,
    leafY,
    lampY,
    half,
    edgeY,
    /** The edge’s petal runs in from the left. */
    petal: `M${Math.max(8, 0.1 * width)} ${edgeY}H${middle}`,
    rays: penumbra === undefined ? '' : line(-1) + line(1),
    cone:
      penumbra === undefined
        ? ''
        : `M${middle - (penumbra * mm) / 2} ${leafY}L${middle} ${edgeY}L${middle + (penumbra * mm) / 2} ${leafY}z`,
    rim,
    eyes,
    eyesY,
    strips: { left: 8, width: width - 16, edgeTop, needleTop, height: stripHeight },
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
