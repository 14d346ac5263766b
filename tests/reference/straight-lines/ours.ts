import { straightLine, type StraightLine } from '#core/rig/fit/straight-line.ts';
import { oursById, type Answer } from '#tests/support/reference-case.ts';

interface Readings {
  x: readonly number[];
  y: readonly number[];
  weight?: readonly number[];
  intercept?: number;
}

/** Everything that a source may print of the line; *known* takes the weights for exact. */
function numbersOf({ intercept, slope, variances, scatter, degreesOfFreedom }: StraightLine) {
  const sigma = scatter ?? NaN;
  return {
    intercept,
    slope,
    scatter: sigma,
    interceptError: sigma * Math.sqrt(variances.intercept),
    slopeError: sigma * Math.sqrt(variances.slope),
    varianceOfIntercept: variances.intercept,
    varianceOfSlope: variances.slope,
    covariance: variances.both,
    squares: sigma ** 2 * degreesOfFreedom,
  };
}

const only =
  (...keys: readonly (keyof ReturnType<typeof numbersOf>)[]) =>
  ({ x, y, weight, intercept }: Readings): Answer => {
    const readings = x.map((value, index) => ({ x: value, y: y[index] as number, weight: weight?.[index] ?? 1 }));
    const line = straightLine(readings, intercept === undefined ? {} : { intercept });
    if (!line) throw new Error('the readings fix no line');
    const numbers = numbersOf(line);
    return Object.fromEntries(keys.map((key) => [key, numbers[key]]));
  };

const errors = only('interceptError', 'slopeError');
const known = only('varianceOfSlope', 'squares');

export const ours = oursById({
  'nist-norris': only('intercept', 'slope', 'interceptError', 'slopeError', 'scatter'),
  'norris-known-errors': only('varianceOfIntercept', 'covariance', 'varianceOfSlope', 'squares'),
  'nist-noint1': only('slope', 'slopeError', 'scatter'),
  'noint1-known-errors': known,
  'nist-noint2': only('slope', 'slopeError'),
  'noint2-known-errors': known,
  'line-moore-mccabe': errors,
  'line-bad-fit': errors,
  'line-weighted': only('intercept', 'slope', 'varianceOfIntercept', 'covariance', 'varianceOfSlope', 'squares'),
});
