/** Beyond it the error function differs from 1 by less than a double can tell. */
const allButOne = 6;
/** Up to here the series serves; beyond, what is missing to 1 is computed, which rounding then hardly touches. */
const seriesEnds = 2;
/** Enough of the continued fraction for a double from {@link seriesEnds} on; checked against other routes. */
const fractionDepth = 60;

/**
 * The error function, 2/√π ∫₀ˣ exp(−t²) dt: the share of a normal distribution within x√2 standard deviations of its mean.
 *
 * erf x = 2/√π · exp(−x²) Σ 2ⁿ x²ⁿ⁺¹ / (1 · 3 · 5 ⋯ (2n + 1))
 *
 * @param x any number; NaN gives NaN
 * @returns from −1 to 1, within 1e-15
 *
 * All terms of the series have the sign of x, so that nothing cancels.
 * Source: Abramowitz and Stegun, 7.1.6 and 7.1.14 (from memory). See [README](README.md#keepers).
 *
 * @example erf(1) // 0.84270079...
 */
export function erf(x: number): number {
  const size = Math.abs(x);
  if (size > allButOne) return Math.sign(x);
  return size > seriesEnds ? Math.sign(x) * (1 - complement(size)) : bySeries(x);
}

function bySeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > Math.abs(sum) * Number.EPSILON; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** 1 − erf x = exp(−x²)/√π · 1/(x + ½/(x + 1/(x + 3⁄2/(x + ⋯)))), from the innermost term outwards. */
function complement(x: number): number {
  let fraction = x;
  for (let n = fractionDepth; n > 0; n--) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}
