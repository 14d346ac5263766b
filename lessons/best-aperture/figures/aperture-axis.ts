import { fNumberSeries } from '#core/quantity/nominal.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { AxisPlan } from '#site/figures/plot/axis.ts';
import { logSamples } from '#site/figures/plot/plot.ts';

/** Where the axis of f-numbers ends: a stop past the smallest mark that is tried, and more. */
const end = 64;

/** From a lens's widest mark on, a whole stop between two ticks; every second stop where the sheet is narrow. */
export function apertureAxis(maxAperture: number, width: number, small: number): AxisPlan {
  const whole = fNumberSeries.filter((_, index) => (index - fNumberSeries.indexOf(8)) % 3 === 0);
  const inside = whole.filter((mark) => mark >= maxAperture && mark <= end);
  const every = (inside.length * 3.4 * small) / width > 1 ? 2 : 1;
  const eight = inside.indexOf(8);
  return {
    scale: 'log',
    domain: [maxAperture, end],
    title: 'marked f-number',
    format: (mark) => printQuantity('f-number', mark).replace('f/', ''),
    ticks: inside.filter((_, index) => (index - Math.max(0, eight)) % every === 0),
  };
}

/** Where curves over it are sampled: a seventh of a stop apart or nearer. */
export function apertureSamples(maxAperture: number): readonly number[] {
  return logSamples(maxAperture, end, Math.max(12, Math.ceil(14 * Math.log2(end / maxAperture))));
}
