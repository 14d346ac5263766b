import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** A flat thing that leans, and the sharp part that runs through it; mm, rad. The far limit may be infinite. */
export interface Lean {
  readonly subjectWidth: number;
  readonly subjectTilt: number;
  readonly focusOffset: number;
  readonly nearLimit: number;
  readonly farLimit: number;
}

/** What stays while a hand drags. */
export interface HeldLean {
  readonly scale: DrawingScale;
}

/**
 * Where everything stands on the sheet, pixels: from the side, the lens to the right, one scale both ways. The middle of the lean is the fixed
 * point in the middle; the sharp plane stands where the focus offset has it.
 */
export function leanLayout(lean: Lean, box: SheetBox, held?: HeldLean) {
  const { text, small } = box;
  const top = 2.7 * text;
  const bottom = box.height - 1.9 * text - 1.9 * small;
  const [middleX, middleY] = [0.5 * box.width, (top + bottom) / 2];
  const room = Math.min(bottom - top, box.width - 8 * text);
  // The whole length, however it leans, and the sharp plane if it is beside it.
  const reach = Math.max(lean.subjectWidth, 2.2 * Math.abs(lean.focusOffset));
  const scale = held?.scale ?? fittingScale(box, (0.8 * room) / reach);
  const pixels = scale.pixelsPerMillimetre;
  const inside = (x: number) => Math.min(box.width + 40, Math.max(-40, x));
  /** Of a place so far beyond the sharp plane. */
  const planeX = middleX + lean.focusOffset * pixels;
  const x = (beyond: number) => inside(planeX - beyond * pixels);
  const [nearX, farX] = [x(-lean.nearLimit), x(lean.farLimit)];
  const [sin, cos] = [Math.sin(lean.subjectTilt), Math.cos(lean.subjectTilt)];
  /** Of a place of the lean so far from its middle, upwards. */
  const at = (along: number) => ({ x: middleX - along * sin * pixels, y: middleY - along * cos * pixels });
  const half = lean.subjectWidth / 2;
  const sharp = sharpPart(lean);
  const line = (from: number, to: number) => {
    const [a, b] = [at(from), at(to)];
    return `M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`;
  };
  const isSharp = (along: number) => sharp !== undefined && along >= sharp[0] && along <= sharp[1];
  // The angle is drawn from the upright through the lean's middle, above it.
  const arc = Math.min(0.62 * half * pixels, 0.3 * (bottom - top));
  return {
    scale,
    top,
    bottom,
    middleX,
    middleY,
    planeX,
    isPlaneSeen: planeX > 0 && planeX < box.width,
    nearX,
    farX,
    slab: { x: Math.max(0, farX), width: Math.max(1.5, Math.min(box.width, nearX) - Math.max(0, farX)) },
    isFarSeen: planeX - lean.farLimit * pixels > 0 && farX < box.width,
    lean: line(-half, half),
    sharp: sharp && line(...sharp),
    /** Just past the upper end, which stays to be seen. */
    grip: { x: at(half).x - 22 * sin, y: at(half).y - 22 * cos },
    ends: [half, -half].map((along) => ({ ...at(along), isSharp: isSharp(along) })),
    upright: `M${middleX} ${middleY}V${(middleY - half * pixels).toFixed(1)}`,
    arc:
      lean.subjectTilt > 0.02 && arc > 6
        ? `M${middleX} ${(middleY - arc).toFixed(1)}A${arc.toFixed(1)} ${arc.toFixed(1)} 0 0 0 ${(middleX - arc * sin).toFixed(1)} ${(middleY - arc * cos).toFixed(1)}`
        : '',
    ruleY: box.height - 1,
  };
}

/** The stretch of the lean that lies within the limits, from its middle, upwards; undefined where none does. */
export function sharpPart(lean: Lean): readonly [from: number, to: number] | undefined {
  const { subjectWidth, subjectTilt, focusOffset, nearLimit, farLimit } = lean;
  const half = subjectWidth / 2;
  const sin = Math.sin(subjectTilt);
  if (sin === 0) return focusOffset >= -nearLimit && focusOffset <= farLimit ? [-half, half] : undefined;
  const from = Math.max(-half, (-nearLimit - focusOffset) / sin);
  const to = Math.min(half, (farLimit - focusOffset) / sin);
  return from < to ? [from, to] : undefined;
}
