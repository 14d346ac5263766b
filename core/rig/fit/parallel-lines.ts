import { requireReadings, type WeightedPoint } from './straight-line.ts';

/** A reading that belongs to one of several lines of the same slope. */
export interface GroupedPoint extends WeightedPoint {
  readonly group: string;
}

/** Straight lines of one slope, y = a_g + b x, nearest to some readings. */
export interface ParallelLines {
  /** *b*. */
  readonly slope: number;
  /** *a_g*, weight and weighted mean of *x*, by group in the order in which they come. */
  readonly groups: ReadonlyMap<string, { readonly intercept: number; readonly weight: number; readonly meanX: number }>;
  /** Var b for readings whose weight is 1/σ² exactly; times `scatter`² where it is that up to a factor. */
  readonly slopeVariance: number;
  /** y − a_g − b x, in the order of the readings. */
  readonly residuals: readonly number[];
  /** How much of its own fitted value a reading decides: 0 to 1. */
  readonly leverages: readonly number[];
  readonly degreesOfFreedom: number;
  /** σ of a reading of weight 1; null where nothing is left over to tell it by. */
  readonly scatter: number | null;
}

const same = 1e-9;

/**
 * The parallel straight lines nearest to readings in groups, by least squares: with one group, `straightLine`'s.
 *
 * b = Σ_g S_xy,g/Σ_g S_xx,g, a_g = ȳ_g − b x̄_g; leverage w (1/W_g + (x − x̄_g)²/S_xx)
 *
 * @param readings *x*, *y*, weight and group of each
 * @returns null where no group has two different *x*: the slope is open
 *
 * @throws RangeError for a reading that is none
 *
 * Source: analysis of covariance; Draper and Smith, Applied Regression Analysis, ch. 14 (from memory). Derived in [README](README.md#several-settings).
 *
 * @example parallelLines([{ x: 0, y: 1, weight: 1, group: 'a' }, { x: 2, y: 2, weight: 1, group: 'a' }]).slope // 0.5
 */
export function parallelLines(readings: readonly GroupedPoint[]): ParallelLines | null {
  requireReadings(readings);
  const middles = new Map<string, { weight: number; meanX: number; meanY: number }>();
  for (const { group, x, y, weight } of readings) {
    const middle = middles.get(group) ?? { weight: 0, meanX: 0, meanY: 0 };
    const all = middle.weight + weight;
    middles.set(group, {
      weight: all,
      meanX: middle.meanX + ((x - middle.meanX) * weight) / all,
      meanY: middle.meanY + ((y - middle.meanY) * weight) / all,
    });
  }
  let [spread, product, apart, farthest] = [0, 0, 0, 0];
  for (const { group, x, y, weight } of readings) {
    const { meanX, meanY } = middles.get(group)!;
    spread += weight * (x - meanX) ** 2;
    product += weight * (x - meanX) * (y - meanY);
    apart = Math.max(apart, Math.abs(x - meanX));
    farthest = Math.max(farthest, Math.abs(x));
  }
  if (!(apart > same * farthest)) return null;
  const slope = product / spread;
  const groups = new Map(
    [...middles].map(([group, { weight, meanX, meanY }]) => [
      group,
      { weight, meanX, intercept: meanY - slope * meanX },
    ]),
  );
  const residuals = readings.map(({ group, x, y }) => y - groups.get(group)!.intercept - slope * x);
  const degreesOfFreedom = readings.length - groups.size - 1;
  const squares = readings.reduce((sum, { weight }, at) => sum + weight * residuals[at]! ** 2, 0);
  return {
    slope,
    groups,
    slopeVariance: 1 / spread,
    residuals,
    leverages: readings.map(({ group, x, weight }) => {
      const { weight: all, meanX } = groups.get(group)!;
      return weight * (1 / all + (x - meanX) ** 2 / spread);
    }),
    degreesOfFreedom,
    scatter: degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : null,
  };
}
