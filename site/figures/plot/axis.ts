import { scaleLinear, scaleLog } from 'd3-scale';

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

/** An axis laid over *range* pixels, with as many labelled ticks as *spacing* pixels each allow. */
export function axis(plan: AxisPlan, range: readonly [number, number], spacing: number): Axis {
  const scale = (plan.scale === 'log' ? scaleLog() : scaleLinear()).domain([...plan.domain]).range([...range]);
  const count = Math.max(2, Math.floor(Math.abs(range[1] - range[0]) / spacing));
  const candidates = plan.ticks ?? (plan.scale === 'log' ? logTicks(plan.domain, count) : scale.ticks(count));
  return {
    at: (value) => scale(value),
    valueAt: (position) => scale.invert(position),
    ticks: candidates.map((value) => ({ value, position: scale(value), label: plan.format(value) })),
  };
}

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
