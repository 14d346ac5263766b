import { bodyBehind } from '#site/figures/side-view/frame.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { levelPitch } from '#site/figures/dimension/stack.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { titleHeight } from '#site/figures/sheet/title-block.ts';

/** The lens as it is drawn, mm: plain data. */
export interface HandView {
  /** Flange to rim as it stands, and how much of that is travel. */
  readonly barrel: number;
  readonly travel: number;
  /** As far out as it goes: the scale stays while the ring turns. */
  readonly longest: number;
  readonly registerDistance: number;
  readonly rimDiameter: number;
  readonly thread: number;
  /** The opening wide open and as it is set, seen from the front. */
  readonly widest: number;
  readonly entrancePupil: number;
  /** Whether a ring on the lens closes the iris; else the camera does. */
  readonly hasApertureRing: boolean;
}

/** One length of the barrel between two stations, pixels; half as high as given. */
export interface Band {
  readonly left: number;
  readonly right: number;
  readonly half: number;
}

export interface HandLayout {
  readonly pixels: number;
  /** The same as a title block states it. */
  readonly scale: DrawingScale;
  readonly axisY: number;
  /** Middle of the front view. */
  readonly frontX: number;
  readonly rimX: number;
  readonly flangeX: number;
  readonly sensorX: number;
  readonly bodyRight: number;
  readonly bodyHalf: number;
  /** The moving head, from rim to rear, with the focus ring on it; the tube that shows behind it; the fixed base. */
  readonly front: Band;
  readonly focusRing: Band;
  readonly tube: Band;
  readonly base: Band;
  readonly apertureRing: Band;
  /** The camera's wheel, where the camera closes the iris. */
  readonly wheel: { readonly x: number; readonly y: number; readonly reach: number; readonly height: number };
  /** Innermost lines of the dimensions above and below, and how many levels have room there. */
  readonly levels: { readonly above: number; readonly below: number };
  readonly above: number;
  readonly below: number;
  readonly title: { readonly y: number; readonly size: number };
}

/** Of a camera body, from the axis to its top, mm: invented. */
const bodyHalf = 28;

/** Between the two views, mm. */
const gap = 12;

/** Levels of dimensions that stand above and below at least. */
const leastLevels = { above: 1, below: 2 };

/** The camera's wheel, mm: half its length, and how far it stands out at the top. */
const wheelSize = { reach: 6, height: 2.4 };

/** A barrel is drawn at least so long, as a share of its rim: shorter ones have no room for their rings. */
const shortest = 0.1;

/** How the barrel without its travel is divided, from the flange on, in shares. */
const withRing = { base: 0.42, ring: 0.41 };
const withoutRing = { base: 0.26, ring: 0.58 };

/** Everything of a lens and its camera from front and side, to one scale. */
export function handLayout(view: HandView, box: SheetBox): HandLayout {
  const { width, height, text, small } = box;
  const { barrel, registerDistance, rimDiameter, hasApertureRing } = view;
  const half = Math.max(bodyHalf, rimDiameter / 2);
  const foot = 11 + titleHeight * small;
  const pitch = levelPitch * text;
  const wheelHeight = hasApertureRing ? 0 : wheelSize.height;
  const room = height - foot - pitch * (leastLevels.above + leastLevels.below) - text;
  const across = rimDiameter + gap + Math.max(barrel, view.longest) + registerDistance + bodyBehind;
  const scale = fittingScale(box, Math.max(1e-3, Math.min((width - 24) / across, room / (2 * half + wheelHeight))));
  const pixels = scale.pixelsPerMillimetre;
  const spare = (width - across * pixels) / 2;
  const flangeX = width - spare - (registerDistance + bodyBehind) * pixels;
  const rimX = flangeX - barrel * pixels;
  // What a wide sheet leaves over goes to more dimensions first.
  const left = Math.max(0, room - (2 * half + wheelHeight) * pixels);
  const more = Math.min(2, Math.floor(left / pitch));
  const levels = {
    above: leastLevels.above + Math.min(1, more),
    below: leastLevels.below + Math.max(0, more - 1),
  };
  const axisY = (left - more * pitch) / 2 + pitch * levels.above + 0.5 * text + (wheelHeight + half) * pixels;
  const own = Math.max(barrel - view.travel, shortest * barrel) * pixels;
  const parts = hasApertureRing ? withRing : withoutRing;
  const r = (rimDiameter / 2) * pixels;
  const baseLeft = flangeX - parts.base * own;
  const headRight = Math.min(baseLeft, rimX + (1 - parts.base) * own);
  const ringLeft = headRight - parts.ring * own;
  const bodyTop = axisY - bodyHalf * pixels;
  return {
    scale,
    pixels,
    axisY,
    frontX: spare + r,
    rimX,
    flangeX,
    sensorX: flangeX + registerDistance * pixels,
    bodyRight: flangeX + (registerDistance + bodyBehind) * pixels,
    bodyHalf: bodyHalf * pixels,
    front: { left: rimX, right: ringLeft, half: r },
    focusRing: { left: ringLeft, right: headRight, half: 1.04 * r },
    tube: { left: headRight, right: baseLeft, half: 0.86 * r },
    base: { left: baseLeft, right: flangeX, half: 0.94 * r },
    apertureRing: {
      left: baseLeft + 0.14 * (flangeX - baseLeft),
      right: flangeX - 0.2 * (flangeX - baseLeft),
      half: 0.98 * r,
    },
    wheel: {
      x: flangeX + 0.42 * registerDistance * pixels,
      y: bodyTop,
      reach: wheelSize.reach * pixels,
      height: wheelSize.height * pixels,
    },
    levels,
    above: axisY - (half + wheelHeight) * pixels - 0.5 * text,
    below: axisY + half * pixels + 1.25 * text,
    title: { y: height - 11, size: small },
  };
}

/** A mark on a ring, by how far the ring turns from it to the end it starts at, radians. */
export interface RingMark {
  readonly text: string;
  readonly turn: number;
}

export interface PlacedMark extends RingMark {
  /** Below the axis, pixels. */
  readonly y: number;
  /** How wide it looks, turned away from the eye: 1 in the middle, 0 at the edge. */
  readonly facing: number;
  readonly isWritten: boolean;
}

/** As far round as marks can still be read, radians. */
const seen = 1.25;

/** Where the marks of a ring stand that is turned so far; the first of *marks* are written first, and none on another. */
export function marksOnRing(marks: readonly RingMark[], turned: number, half: number, text: number): PlacedMark[] {
  const written: number[] = [];
  return marks.flatMap((mark): PlacedMark[] => {
    const angle = mark.turn - turned;
    if (Math.abs(angle) > Math.PI / 2) return [];
    const y = half * Math.sin(angle);
    const isWritten =
      Math.abs(angle) < seen && Math.abs(y) < half - 0.4 * text && written.every((other) => Math.abs(other - y) > text);
    if (isWritten) written.push(y);
    return [{ ...mark, y, facing: Math.cos(angle), isWritten }];
  });
}

/** Knurls of a ring as one path: lines along the axis, closer where the ring turns away. */
export function knurls({ left, right, half }: Band, axisY: number, turned: number, count: number): string {
  let path = '';
  const step = (2 * Math.PI) / count;
  for (let angle = -Math.PI / 2 + (turned % step); angle < Math.PI / 2; angle += step) {
    const y = axisY - half * Math.sin(angle);
    path += `M${left.toFixed(1)} ${y.toFixed(1)}H${right.toFixed(1)}`;
  }
  return path;
}
