import { ticks as evenTicks } from 'd3-array';

export interface AxisPlan {
  readonly scale: 'log' | 'linear';
  readonly domain: readonly [number, number];
  /** Axis title with its unit: `magnification m`, `contrast, %`. */
  readonly title: string;
  /** How a tick's value reads. */
  readonly format: (value: number) => string;
  /** Ticks of one's own, where the trade has its series. */
  readonly ticks?: readonly number[];
}

export interface Axis {
  readonly at: (value: number) => number;
  readonly valueAt: (position: number) => number;
  readonly ticks: readonly { readonly value: number; readonly position: number; readonly label: string }[];
}

/**
 * An axis laid over *range* pixels, with as many labelled ticks as *spacing* pixels each allow.
 *
 * The mapping is written out: d3-scale would bring colour and date interpolation to every reader for these four lines.
 */
export function axis(plan: AxisPlan, range: readonly [number, number], spacing: number): Axis {
  const { domain } = plan;
  const [into, back] = plan.scale === 'log' ? [Math.log, Math.exp] : [identity, identity];
  const slope = (range[1] - range[0]) / (into(domain[1]) - into(domain[0]));
  const at = (value: number) => range[0] + (into(value) - into(domain[0])) * slope;
  const valueAt = (position: number) => back(into(domain[0]) + (position - range[0]) / slope);
  const count = Math.max(2, Math.floor(Math.abs(range[1] - range[0]) / spacing));
  const own = plan.ticks?.filter((value) => value >= domain[0] && value <= domain[1]);
  const values = own ?? (plan.scale === 'log' ? logTicks(domain, count) : evenTicks(domain[0], domain[1], count));
  return { at, valueAt, ticks: values.map((value) => ({ value, position: at(value), label: plan.format(value) })) };
}

const identity = (value: number) => value;

/** 1, 2, 5 in each decade while they fit, else whole decades. */
function logTicks([least, most]: readonly [number, number], count: number): number[] {
  const decades = Math.log10(most / least);
  const mantissas = decades * 3 <= count ? [1, 2, 5] : [1];
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(least)); power <= Math.log10(most); power++) {
    for (const mantissa of mantissas) ticks.push(Number(`${mantissa}e${power}`));
  }
  return ticks.filter((value) => value >= least * 0.999 && value <= most * 1.001);
}
