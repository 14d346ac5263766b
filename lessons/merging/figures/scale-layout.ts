import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { roundStep } from '#site/state/rungs.ts';
import type { Stroke } from './edge-layout.ts';

/** What became of the first frame’s size in the last, by both routes, and at the side from one frame to the next. */
export interface ScaleState {
  readonly sensorWidth: number;
  /** Size in the last frame over size in the first; undefined where the lens would reach the subject. */
  readonly rail: number | undefined;
  readonly ring: number | undefined;
  /** Pixels from one frame to the next, if there is one. */
  readonly shift: number | undefined;
}

/** A loupe shows at least so many pixels, and about so many squares. */
const [fewest, squares] = [4, 12];

/**
 * Two drawings, pixels: on the left the sensor’s frame, with what filled it in the first picture as it stands in the last; on the right a loupe on the
 * middle of the frame’s side. A frame is drawn 3 : 2.
 */
export function scaleLayout(state: ScaleState, box: SheetBox, heldSpan?: number) {
  const { text, small, width } = box;
  const top = 2 * text;
  const height = Math.max(6 * text, box.height - top - 2.6 * text - 1.7 * small);
  const loupe = Math.min(0.34 * width, height - 3.2 * text);
  const loupeX = width - loupe - 0.8 * text;
  const loupeY = top + 1.9 * text;
  const room = loupeX - 1.6 * text;
  const half = Math.min(0.45 * room, 0.68 * height);
  const [x, y] = [room / 2, height / 2];
  const outline = (times: number) => {
    const [w, h] = [half * times, (half * times * 2) / 3];
    return `M${x - w} ${y - h}h${2 * w}v${2 * h}h${-2 * w}z`;
  };
  const span = heldSpan ?? Math.max(fewest, 1.5 * (state.shift ?? 0));
  const square = Math.max(1, roundStep(span / squares));
  const pixel = loupe / (Math.ceil(span / square) * square);
  const startX = pixel * square;
  const nextX = state.shift === undefined ? undefined : startX + pixel * state.shift;
  const lines = Array.from({ length: Math.ceil(loupe / startX) + 1 }, (_, index) => index * startX);
  const grid = lines.map((at) => `M${at} 0V${loupe}M0 ${at}H${loupe}`).join('');
  return {
    top,
    height,
    room,
    loupe,
    loupeX,
    loupeY,
    span,
    square,
    pixel,
    startX,
    /** The detail one frame later. */
    next:
      nextX === undefined
        ? undefined
        : { x: nextX, line: [['last', 'edge-shift', `M${nextX} 0V${loupe}`]] satisfies Stroke[] },
    /** Where text goes at the outline of this size: just within its upper or lower side, or above it. */
    textAt: (times: number, where: 'within' | 'low' | 'over') => ({
      x: Math.max(4, x - half * Math.min(1, times) + 0.5 * small),
      y:
        top +
        (where === 'low'
          ? Math.min(height, y + (half * times * 2) / 3) - 0.5 * small
          : where === 'over'
            ? Math.max(0, y - (half * times * 2) / 3) - 0.5 * small
            : Math.max(0, y - (half * times * 2) / 3) + 1.2 * small),
    }),
    /** From the middle of the frame’s right side to the loupe. */
    callout: [
      ['rim', undefined, `M${loupeX} ${loupeY}L${x + half} ${top + y}L${loupeX} ${loupeY + loupe}`],
    ] satisfies Stroke[],
    outlines: [
      ['first', undefined, outline(1)],
      ['last', 'scale-change', state.rail === undefined ? '' : outline(state.rail)],
      ['ring', 'edge-shift', state.ring === undefined ? '' : outline(state.ring)],
      ['axis', undefined, `M${x - half} ${y}h${2 * half}M${x} ${y - (half * 2) / 3}v${(half * 4) / 3}`],
    ] satisfies Stroke[],
    squares: [
      ['grid', undefined, grid],
      ['first', undefined, `M${startX} 0V${loupe}`],
    ] satisfies Stroke[],
  };
}
