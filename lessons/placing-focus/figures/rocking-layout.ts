import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';
import { dealtFrames, deviatesOf } from './dealt.ts';

/** One who sways, and with him a thin slab that is sharp, mm; the far limits may be infinite. */
export interface Rocking {
  readonly sway: number;
  readonly focusOffset: number;
  readonly nearLimit: number;
  readonly farLimit: number;
  /** The limits two stops further on. */
  readonly closed: { readonly nearLimit: number; readonly farLimit: number };
  /** Which deal is drawn, counted from 0; the first if absent. */
  readonly turn?: number;
  /** How many frames of it have been taken; all if absent. */
  readonly taken?: number;
}

type Limits = Pick<Rocking, 'nearLimit' | 'farLimit'>;

/** Whether a place so far beyond the sharp plane is sharp. */
const isWithin = ({ nearLimit, farLimit }: Limits, beyond: number) => beyond >= -nearLimit && beyond <= farLimit;

/** How many of the frames that have been taken of one deal have the place in focus. */
export function keepersOf({ sway, focusOffset, turn = 0, taken = dealtFrames }: Rocking, limits: Limits): number {
  return deviatesOf(turn)
    .slice(0, taken)
    .filter((deviate) => isWithin(limits, focusOffset + sway * deviate)).length;
}

/** The same of all deals so far. */
export function keepersSoFar(state: Rocking, limits: Limits): number {
  const { turn = 0 } = state;
  const { taken: _, ...whole } = state;
  const before = Array.from({ length: turn }, (_, at) => keepersOf({ ...whole, turn: at }, limits));
  return before.reduce((a, b) => a + b, keepersOf(state, limits));
}

/** Of dots, one above the other: 49 deals of 50 need no more. */
const dotRows = 8;
/** As far as the bell curve is drawn, in sways. */
const tails = 3.3;

/**
 * Where everything stands on the sheet, pixels: millimetres along the axis, the place that should be sharp in the middle, the lens to the right. The
 * sharp plane may be in the zone about that place: as far in front of it as sharpness reaches behind a plane, as far behind as it reaches in front.
 * Above is the bell curve of where the plane is, below the frames as dots in columns. A scale that is *held* stays.
 */
export function rockingLayout(state: Rocking, box: SheetBox, held?: DrawingScale) {
  const { text, small } = box;
  const { sway, focusOffset } = state;
  const reach = tails * sway + Math.abs(focusOffset);
  const scale = held ?? fittingScale(box, (0.5 * box.width - 2) / reach);
  const pixels = scale.pixelsPerMillimetre;
  const eyeX = 0.5 * box.width;
  // What is counted stands in three lines at the left: over the dimension where it is as long as half of the sheet.
  const top = (box.width < 42 * small ? 5 : 3.1) * text;
  // On paper the title stands at the rule, which a reader lays a ruler on; on a screen the curve has that room.
  const bottom = box.height - 0.6 * text - (box.onPaper ? 4.3 : 1.9) * small;
  const dot = Math.max(3.2, Math.min(0.5 * small, (bottom - top) / 36));
  const ground = bottom - (2.05 * dotRows + 0.5) * dot;
  const peak = ground - top;
  const inside = (x: number) => Math.min(box.width + 40, Math.max(-40, x));
  /** Where the plane is when the place is so far *beyond* it: that much nearer to the lens. */
  const x = (beyond: number) => eyeX + beyond * pixels;
  const bell = (deviate: number) => ground - peak * Math.exp((-deviate * deviate) / 2);
  const middleX = x(focusOffset);
  const zoneOf = (limits: Limits) => {
    const [from, to] = [Math.max(0, x(-limits.nearLimit)), Math.min(box.width, x(limits.farLimit))];
    // However thin, it is there.
    return { x: Math.min(from, eyeX - 0.75), width: Math.max(1.5, to - from) };
  };
  const spread = sway * pixels;
  // Each where it is along the axis, as low as those beside it leave room.
  const ends: number[] = [];
  const dots = deviatesOf(state.turn ?? 0)
    .map((deviate, index) => ({ beyond: focusOffset + sway * deviate, index }))
    .sort((one, other) => one.beyond - other.beyond)
    .map(({ beyond, index }) => {
      const at = x(beyond);
      const free = ends.findIndex((end) => at - end >= 2.05 * dot);
      const row = free < 0 ? ends.length : free;
      ends[row] = at;
      return { x: inside(at), y: bottom - (1 + 2.05 * row) * dot, isKept: isWithin(state, beyond), index };
    });
  const steps = Array.from({ length: 67 }, (_, index) => -tails + (index * tails) / 33);
  return {
    scale,
    eyeX,
    /** The sharp plane, as the hand is *deviate* sways from its middle. */
    planeAt: (deviate: number) => inside(x(focusOffset + sway * deviate)),
    top,
    ground,
    bottom,
    titleY: box.onPaper ? box.height - 2.1 * small - 4 : ground - 1.6 * small,
    dot,
    zone: zoneOf(state),
    closed: zoneOf(state.closed),
    curve: steps
      .map(
        (deviate, at) =>
          `${at ? 'L' : 'M'}${inside(x(focusOffset + deviate * sway)).toFixed(1)} ${bell(deviate).toFixed(1)}`,
      )
      .join(''),
    middle: { x: Math.min(box.width - 14, Math.max(14, middleX)), y: top },
    /** One sway to the right of the middle, on the curve. */
    width: { x: Math.min(box.width - 14, Math.max(14, middleX + spread)), y: bell(1) },
    arm: `M${inside(middleX).toFixed(1)} ${bell(1).toFixed(1)}H${inside(middleX + spread).toFixed(1)}`,
    upright: `M${inside(middleX).toFixed(1)} ${top}V${ground.toFixed(1)}`,
    dots,
  };
}
