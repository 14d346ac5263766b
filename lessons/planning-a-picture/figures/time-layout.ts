import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { axis } from '#site/figures/plot/axis.ts';

/** One line of times: what may be taken, and what is asked for, s. */
export interface TimeRow {
  readonly title: string;
  readonly may: { readonly time: number; readonly words: string };
  readonly takes: { readonly time: number; readonly words: string };
}

/** From a flash to a day's patience. */
const [least, most] = [1e-5, 1e5];

const tick = (seconds: number) =>
  seconds >= 3600 ? `${Math.round(seconds / 3600)} h` : seconds >= 1 ? `${seconds} s` : `1/${Math.round(1 / seconds)}`;

/** Pixels: every row a line of time, each decade as long as the next. Times off its ends stand at the end. */
export function timeLayout(rows: readonly TimeRow[], box: SheetBox) {
  const { width, height, text, small } = box;
  const [left, right] = [1.2 * text, width - 1.2 * text];
  const [top, bottom] = [0.4 * text, height - 3.9 * small - 0.4 * text];
  const line = axis(
    {
      scale: 'log',
      domain: [least, most],
      title: '',
      format: tick,
      ticks: (right - left) / 10 < 6 * small ? [1e-4, 1e-2, 1, 1e2] : [1e-4, 1e-3, 1e-2, 1e-1, 1, 10, 100, 1000],
    },
    [left, right],
    text,
  );
  const x = (time: number) => Number(line.at(Math.min(most, Math.max(least, time))).toFixed(2));
  const each = (bottom - top) / rows.length;
  return {
    left,
    right,
    bottom,
    line,
    rows: rows.map((row, index) => {
      const from = top + index * each;
      const y = from + 1.25 * text;
      const barTop = y + 0.45 * text;
      const barHeight = Math.max(0.7 * text, Math.min(1.5 * text, from + each - barTop - 2.1 * text));
      return {
        ...row,
        titleY: y,
        barTop,
        barHeight,
        wordsY: barTop + barHeight + 1.2 * text,
        mayX: x(row.may.time),
        takesX: x(row.takes.time),
        isGood: row.takes.time <= row.may.time,
      };
    }),
    timeAt: (position: number) => line.valueAt(Math.min(right, Math.max(left, position))),
  };
}
