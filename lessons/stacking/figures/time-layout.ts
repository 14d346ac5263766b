import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** When the frames of a stack are taken, s. */
export interface TimeState {
  /** 0 where there is no stack to take. */
  readonly frameCount: number;
  readonly taken: number;
  readonly exposureTime: number;
  /** The longer of the two waits. */
  readonly wait: number;
  readonly stackTime: number;
  readonly timeLimit: number;
}

/** More bars than that would be one. */
const mostBars = 400;

/** Pixels: a line of time with a bar for every exposure, the deadline across it. *heldSpan* keeps the line as it is while a hand drags. */
export function timeLayout(state: TimeState, box: SheetBox, heldSpan?: number) {
  const { text, width } = box;
  const left = 1.2 * text;
  const room = width - 2.4 * text;
  const toDeadline = 1.15 * state.timeLimit;
  // A deadline far beyond the stack would leave nothing of it to see.
  const toBoth = Math.max(1.08 * state.stackTime, Math.min(toDeadline, 4 * state.stackTime));
  const span = heldSpan ?? (state.frameCount > 0 ? toBoth : toDeadline);
  const perSecond = room / span;
  const x = (time: number) => left + time * perSecond;
  const top = 3.2 * text;
  const bottom = box.height - 6 * text;
  const barTop = top + 0.25 * (bottom - top);
  const bar = (index: number) => {
    const from = x(index * (state.exposureTime + state.wait));
    return `M${from} ${barTop}h${Math.max(1.5, state.exposureTime * perSecond)}V${bottom}H${from}z`;
  };
  const bars = (from: number, to: number) =>
    Array.from({ length: Math.max(0, Math.min(to, mostBars) - from) }, (_, index) => bar(from + index)).join('');
  return {
    left,
    top,
    bottom,
    span,
    perSecond,
    taken: bars(0, state.taken),
    lost: bars(state.taken, state.frameCount),
    endX: x(state.stackTime),
    deadlineX: Math.min(x(state.timeLimit), width - 0.6 * text),
    isBeyond: state.timeLimit > span,
    isCut: state.frameCount > mostBars,
  };
}
