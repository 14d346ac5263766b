import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { axis, type Axis, type AxisPlan } from './axis.ts';

/** Words in a plot: names of ticks, axes, curves, remarks. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** The quantity it speaks of, whose colour it takes. */
  readonly name?: string | undefined;
}

export interface PlotPlan {
  readonly x: AxisPlan;
  readonly y: AxisPlan;
  /** Room kept free below the axis, e.g. for a title block. */
  readonly foot?: number;
}

/** Where a plot stands on its sheet, in pixels, and what belongs to any plot: the axes, their grid and their words. */
export interface PlotFrame {
  readonly x: Axis;
  readonly y: Axis;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  /** SVG paths. */
  readonly axes: string;
  readonly grid: string;
  readonly labels: readonly Label[];
}

export function plotFrame(plan: PlotPlan, { width, height, text, small }: SheetBox): PlotFrame {
  const [left, right] = [4.2 * small + 0.6 * text, width - 1.2 * text];
  const [top, bottom] = [2.2 * text, height - (plan.foot ?? 0) - 3.2 * text];
  const x = axis(plan.x, [left, right], 5 * text);
  const y = axis(plan.y, [bottom, top], 3 * text);
  const label = (words: string, atX: number, atY: number, size: number, anchor: Label['anchor']): Label => ({
    text: words,
    x: atX,
    y: atY,
    size,
    anchor,
  });
  return {
    x,
    y,
    top,
    bottom,
    left,
    right,
    axes: `M${left} ${top}V${bottom}H${right}`,
    grid:
      x.ticks.map(({ position }) => `M${position} ${top}V${bottom + 5}`).join('') +
      y.ticks.map(({ position }) => `M${left - 5} ${position}H${right}`).join(''),
    labels: [
      ...x.ticks.map((tick) => label(tick.label, tick.position, bottom + 1.25 * small, small, 'middle')),
      ...y.ticks.map((tick) => label(tick.label, left - 8, tick.position + 0.35 * small, small, 'end')),
      label(`${plan.x.title} →`, right, bottom + 2.6 * small, text, 'end'),
      label(`↑ ${plan.y.title}`, 4, 1.1 * text, text, 'start'),
    ],
  };
}
