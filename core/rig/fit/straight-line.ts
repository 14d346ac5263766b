/** One reading: *y* at *x*, counting as *weight* readings of weight 1 do. */
export interface WeightedPoint {
  readonly x: number;
  readonly y: number;
  /** 1/σ² of *y*, up to a factor that is the same for all; above 0. */
  readonly weight: number;
}

/** Throws RangeError unless every reading is one: *x* and *y* finite, the weight above 0. */
export function requireReadings(readings: readonly WeightedPoint[]): void {
  for (const { x, y, weight } of readings) {
    if (!(Number.isFinite(x) && Number.isFinite(y) && weight > 0 && weight < Infinity))
      throw new RangeError(
        `a reading is ${y} at ${x} with the weight ${weight}; accepted: finite numbers, a weight above 0`,
      );
  }
}

/** The straight line y = a + b x nearest to some readings, and how well they fix it. */
export interface StraightLine {
  /** *a*; the one that was given, where it was. */
  readonly intercept: number;
  /** *b*. */
  readonly slope: number;
  /** Var a, Cov ab and Var b for readings whose weight is 1/σ² exactly; times `scatter`² where it is that only up to a factor. */
  readonly variances: { readonly intercept: number; readonly both: number; readonly slope: number };
  /** y − a − b x, in the order of the readings. */
  readonly residuals: readonly number[];
  /** Readings beyond those that the unknowns use up. */
  readonly degreesOfFreedom: number;
  /** √(Σ weight residual²/degrees of freedom), σ of a reading of weight 1; null where nothing is left over to tell it by. */
  readonly scatter: number | null;
}

/** Lengths of which even the longest differs from the others by less than this share are one length. */
const same = 1e-9;

/**
 * The straight line nearest to readings, by least squares.
 *
 * b = Σ w (x − x̄)(y − ȳ)/Σ w (x − x̄)², a = ȳ − b x̄; through a known a: b = Σ w x (y − a)/Σ w x²
 *
 * @param readings *x*, *y* and weight of each, all finite
 * @param known.intercept *a*, where it need not be found
 * @returns the line, or null where the readings leave its slope open: too few of them, or all at one *x*
 *
 * @throws RangeError for a reading that is none
 *
 * Assumes errors in *y* alone, independent of one another. Taken about the mean, so that large numbers far from zero lose no digits.
 * Source: derived in [README](README.md#straight-lines).
 *
 * @example straightLine([{ x: 0, y: 1, weight: 1 }, { x: 2, y: 2, weight: 1 }]).slope // 0.5
 */
export function straightLine(
  readings: readonly WeightedPoint[],
  known: { readonly intercept?: number } = {},
): StraightLine | null {
  requireReadings(readings);
  const total = sum(readings, ({ weight }) => weight);
  const free = known.intercept === undefined;
  const middleX = free ? sum(readings, ({ x, weight }) => weight * x) / total : 0;
  const middleY = free ? sum(readings, ({ y, weight }) => weight * y) / total : known.intercept;
  const spread = sum(readings, ({ x, weight }) => weight * (x - middleX) ** 2);
  const farthest = Math.max(0, ...readings.map(({ x }) => Math.abs(x)));
  const apart = Math.max(0, ...readings.map(({ x }) => Math.abs(x - middleX)));
  // NaN, of no reading at all, is not above anything either.
  if (!(apart > same * farthest)) return null;

  const slope = sum(readings, ({ x, y, weight }) => weight * (x - middleX) * (y - middleY)) / spread;
  const intercept = middleY - slope * middleX;
  const residuals = readings.map(({ x, y }) => y - middleY - slope * (x - middleX));
  const degreesOfFreedom = readings.length - (free ? 2 : 1);
  const squares = readings.reduce(
    (before, { weight }, index) => before + weight * (residuals[index] as number) ** 2,
    0,
  );
  return {
    intercept,
    slope,
    variances: {
      intercept: free ? 1 / total + middleX ** 2 / spread : 0,
      both: -middleX / spread || 0,
      slope: 1 / spread,
    },
    residuals,
    degreesOfFreedom,
    scatter: degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : null,
  };
}

function sum(readings: readonly WeightedPoint[], of: (reading: WeightedPoint) => number): number {
  return readings.reduce((before, reading) => before + of(reading), 0);
}
