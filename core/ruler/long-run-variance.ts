/**
 * Variances of two fitted numbers whose readings' errors hang together over some samples: the sandwich of least squares.
 *
 * V = H⁻¹ S H⁻¹, H = Σ d dᵀ, S = Σ_l w_l Σ_t (d_t r_t)(d_{t+l} r_{t+l})ᵀ, w_l = 1 − |l|/(L + 1)
 *
 * @param directions *d*, what each of the two changes in every sample, with what other unknowns could do taken out
 * @param residuals *r*
 * @param together *L*, over how many samples errors hang together
 * @param unknowns how many numbers were fitted in all
 * @returns variance of the first, covariance, variance of the second
 *
 * Source: Newey and West, Econometrica 55 (1987) 703 (from memory); the factor count/(count − unknowns) is White's.
 */
export function longRunVariance(
  directions: readonly [Float64Array, Float64Array],
  residuals: Float64Array,
  together: number,
  unknowns: number,
): readonly [first: number, both: number, second: number] {
  const count = residuals.length;
  const [one, other] = directions;
  const [u, v] = [one.map((d, at) => d * residuals[at]!), other.map((d, at) => d * residuals[at]!)];
  const lags = Math.min(count - 1, Math.max(0, Math.round(together)));
  let [uu, uv, vv] = [0, 0, 0];
  for (let lag = 0; lag <= lags; lag++) {
    const weight = lag === 0 ? 1 : 1 - lag / (lags + 1);
    for (let at = 0; at + lag < count; at++) {
      uu += (lag === 0 ? 1 : 2) * weight * u[at]! * u[at + lag]!;
      vv += (lag === 0 ? 1 : 2) * weight * v[at]! * v[at + lag]!;
      uv += lag === 0 ? u[at]! * v[at]! : weight * (u[at]! * v[at + lag]! + u[at + lag]! * v[at]!);
    }
  }
  let [a, b, c] = [0, 0, 0];
  for (let at = 0; at < count; at++) {
    a += one[at]! ** 2;
    b += one[at]! * other[at]!;
    c += other[at]! ** 2;
  }
  const determinant = a * c - b * b;
  const [p, q, r] = [c / determinant, -b / determinant, a / determinant];
  const factor = count / Math.max(1, count - unknowns);
  return [
    factor * (p * p * uu + 2 * p * q * uv + q * q * vv),
    factor * (p * q * uu + (p * r + q * q) * uv + q * r * vv),
    factor * (q * q * uu + 2 * q * r * uv + r * r * vv),
  ];
}
