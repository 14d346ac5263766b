/** √3 − 2: the pole of the filter that turns samples into weights of cubic B-splines. */
const pole = Math.sqrt(3) - 2;
/** Terms of a geometric series in the pole that a single-precision sum can tell. */
const terms = 14;

/**
 * Turns lines of samples, in place, into weights of the cubic B-splines that pass through them.
 *
 * The sum of splines is (w₋ + 4 w + w₊)/6 at a sample; undone by one recursion forwards and one backwards. Beyond its ends a line is
 * mirrored at its last samples.
 *
 * @param samples lines of `length`, neighbours `step` apart, the lines themselves `apart`
 *
 * Source: Unser, Aldroubi and Eden, B-spline signal processing II, IEEE Trans. Signal Process. 41 (1993), 834 (from memory).
 */
export function splineCoefficients(
  samples: Float32Array,
  { length, step, lines, apart }: { length: number; step: number; lines: number; apart: number },
): void {
  if (length < 2) return;
  const last = (length - 1) * step;
  const period = 2 * length - 2;
  for (let line = 0; line < lines; line++) {
    const start = line * apart;
    let causal = 0;
    let power = 1;
    for (let k = 0; k < terms; k++, power *= pole) {
      const mirrored = k % period;
      causal += power * samples[start + (mirrored < length ? mirrored : period - mirrored) * step]!;
    }
    samples[start] = 6 * causal;
    for (let at = start + step; at <= start + last; at += step) {
      causal = samples[at]! + pole * causal;
      samples[at] = 6 * causal;
    }
    const end = start + last;
    let back = (pole / (pole * pole - 1)) * (samples[end]! + pole * samples[end - step]!);
    samples[end] = back;
    for (let at = end - step; at >= start; at -= step) {
      back = pole * (back - samples[at]!);
      samples[at] = back;
    }
  }
}

/** Where on a line of samples each place of another looks, and the four splines that meet there. */
export interface Taps {
  /** Four a place: indices of the splines, mirrored at the ends. */
  readonly index: Int32Array;
  /** Four a place. */
  readonly weight: Float32Array;
}

/** The splines under the places middle + scale (k − middle), for each k of a line. */
export function tapsOf(length: number, scale: number): Taps {
  const middle = (length - 1) / 2;
  const index = new Int32Array(4 * length);
  const weight = new Float32Array(4 * length);
  const period = Math.max(1, 2 * length - 2);
  for (let k = 0; k < length; k++) {
    const place = middle + scale * (k - middle);
    const below = Math.floor(place);
    const t = place - below;
    const s = 1 - t;
    const weights = [s ** 3 / 6, 2 / 3 - t * t + t ** 3 / 2, 2 / 3 - s * s + s ** 3 / 2, t ** 3 / 6];
    weights.forEach((value, tap) => {
      const mirrored = Math.abs(below - 1 + tap) % period;
      index[4 * k + tap] = mirrored < length ? mirrored : period - mirrored;
      weight[4 * k + tap] = value;
    });
  }
  return { index, weight };
}
