import { densityAt, marksAt, mostDrift, sampleAt, type CombShape } from './comb.ts';
import { envelope, trustAt } from './envelope.ts';
import { longRunVariance } from './long-run-variance.ts';
import { withoutSlowPart } from './slow-part.ts';
import { solveSymmetric } from './solve-symmetric.ts';

/** A comb fitted to a profile, and how well. */
export interface CombFit extends CombShape {
  /** Of κ and γ: variances and covariance, from the residuals and how they hang together. */
  readonly variances: { readonly cycles: number; readonly both: number; readonly drift: number };
  /** Marks stand where k(s) is this and a whole number more; from 0 to 1. */
  readonly phase: number;
  /** Share of the profile's variation, without its slow part, that the comb explains: 0 to 1. */
  readonly explained: number;
  /** How well single marks agree on where they all stand: 1 for a comb, far less for chance. */
  readonly coherence: number;
  /** How many marks are sharp enough to count. */
  readonly trusted: number;
}

const rounds = 12;

/**
 * The comb nearest to a profile by least squares: density, drift, and up to four harmonics whose strength may change along the line.
 *
 * light(s) = slow part + Σ e_h(s) (a_h cos 2πh k(s) + b_h sin 2πh k(s))
 *
 * @param profile evenly spaced samples
 * @param start near it, from `combStarts`
 * @returns undefined where the iteration leaves the range in which there are combs
 *
 * e_h, how strong a harmonic is from place to place, is read from the profile itself and held while the rest is fitted (Gauss and Newton). The
 * variances are those of least squares with residuals that hang together over two marks (Newey and West, Econometrica 55 (1987) 703; from memory).
 */
export function fitComb(profile: Float64Array, start: CombShape): CombFit | undefined {
  const count = profile.length;
  let shape = start;
  let state = stateOf(profile, shape);
  for (let round = 0; round < rounds; round++) {
    if (round > 0 && round <= 4) state = stateOf(profile, shape);
    const { normal, right } = equations(state, shape);
    const solved = solveSymmetric(normal, right);
    if (!solved) return undefined;
    state = { ...state, coefficients: solved.slice(2) };
    // The first round only finds how strong the harmonics are: until then nothing says which way to go.
    if (round === 0) continue;
    const next = { cycles: shape.cycles + solved[0]!, drift: shape.drift + solved[1]! };
    const isNear = Math.abs(next.cycles / start.cycles - 1) < 0.2 && Math.abs(next.drift) < mostDrift * 1.3;
    if (!(isNear && next.cycles > 0)) return undefined;
    const moved = Math.abs(solved[0]!) + shape.cycles * Math.abs(solved[1]!);
    shape = next;
    if (round > 4 && moved < 1e-9) break;
  }
  const residuals = residualsOf(state, shape);
  const squares = residuals.reduce((sum, one) => sum + one * one, 0);
  const all = state.level.reduce((sum, one) => sum + one * one, 0);
  const [a, b] = state.coefficients as [number, number];
  // Marks are what there is less of: dark on a light ruler, or light on a dark one.
  const areDark = state.level.reduce((sum, one) => sum + one ** 3, 0) < 0;
  const phase = Math.atan2(b, a) / (2 * Math.PI) + (areDark ? 1.5 : 1);
  return {
    ...shape,
    variances: variancesOf(state, shape, residuals),
    phase: phase % 1,
    explained: all > 0 ? Math.max(0, 1 - squares / all) : 0,
    coherence: coherenceOf(state.level, shape),
    trusted: shape.cycles * (state.trust.reduce((sum, one) => sum + one, 0) / count),
  };
}

/** The profile without its slow part, and the harmonics' strengths, both times how far a sample is trusted. */
interface State {
  readonly level: Float64Array;
  readonly trust: Float64Array;
  readonly envelopes: readonly Float64Array[];
  /** a₁, b₁, a₂, b₂ … */
  readonly coefficients: readonly number[];
}

function stateOf(profile: Float64Array, shape: CombShape): State {
  const level = withoutSlowPart(profile, shape);
  const trust = trustAt(envelope(level, shape, 1));
  const finest = (profile.length - 1) / Math.max(densityAt(shape, -0.5), densityAt(shape, 0.5));
  const count = Math.max(1, Math.min(4, Math.floor(0.45 * finest)));
  const weighted = (value: number, at: number) => value * trust[at]!;
  const envelopes = Array.from({ length: count }, (_, index) => envelope(level, shape, index + 1).map(weighted));
  return { level: level.map(weighted), trust, envelopes, coefficients: envelopes.flatMap(() => [0, 0]) };
}

/** The model's columns at one sample: by κ, by γ, and one cosine and one sine a harmonic; what the model says there comes last. */
function columnsAt({ envelopes, coefficients }: State, shape: CombShape, at: number, into: Float64Array): void {
  const s = sampleAt(at, envelopes[0]!.length);
  const k = marksAt(shape, s);
  let [slope, value] = [0, 0];
  envelopes.forEach((strength, index) => {
    const turn = 2 * Math.PI * (index + 1);
    const [cosine, sine] = [strength[at]! * Math.cos(turn * k), strength[at]! * Math.sin(turn * k)];
    const [a, b] = [coefficients[2 * index]!, coefficients[2 * index + 1]!];
    into[2 + 2 * index] = cosine;
    into[3 + 2 * index] = sine;
    value += a * cosine + b * sine;
    slope += turn * (b * cosine - a * sine);
  });
  const stretch = 1 + shape.drift * s;
  into[0] = (slope * s) / stretch;
  into[1] = (-slope * shape.cycles * s * s) / stretch ** 2;
  into[2 + coefficients.length] = value;
}

/** Normal equations for steps of κ and γ and the harmonics themselves. */
function equations(state: State, shape: CombShape): { normal: Float64Array[]; right: Float64Array } {
  const size = 2 + state.coefficients.length;
  const normal = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  const row = new Float64Array(size + 1);
  for (let at = 0; at < state.level.length; at++) {
    columnsAt(state, shape, at, row);
    for (let one = 0; one < size; one++) {
      right[one]! += row[one]! * state.level[at]!;
      for (let other = 0; other <= one; other++) normal[one]![other]! += row[one]! * row[other]!;
    }
  }
  for (let one = 0; one < size; one++)
    for (let other = 0; other < one; other++) normal[other]![one] = normal[one]![other]!;
  // Before anything is known of the harmonics a step of κ and γ changes nothing: they are held.
  for (const step of [0, 1]) if (normal[step]![step] === 0) normal[step]![step] = 1;
  return { normal, right };
}

function residualsOf(state: State, shape: CombShape): Float64Array {
  const row = new Float64Array(3 + state.coefficients.length);
  return state.level.map((value, at) => {
    columnsAt(state, shape, at, row);
    return value - row[row.length - 1]!;
  });
}

function variancesOf(state: State, shape: CombShape, residuals: Float64Array): CombFit['variances'] {
  const { normal } = equations(state, shape);
  const size = normal.length;
  // What κ and γ change that no change of the harmonics could do as well.
  const apart = [0, 1].map((of) => {
    const linear = solveSymmetric(
      normal.slice(2).map((row) => row.slice(2)),
      normal[of]!.slice(2),
    )!;
    return [of === 0 ? 1 : 0, of === 1 ? 1 : 0, ...linear.map((value) => -value)];
  });
  const row = new Float64Array(size + 1);
  const directions = [new Float64Array(residuals.length), new Float64Array(residuals.length)] as const;
  for (let at = 0; at < residuals.length; at++) {
    columnsAt(state, shape, at, row);
    apart.forEach((weights, of) => {
      directions[of]![at] = weights.reduce((sum, weight, column) => sum + weight * row[column]!, 0);
    });
  }
  const together = (2 * (residuals.length - 1)) / shape.cycles;
  const [cycles, both, drift] = longRunVariance(directions, residuals, together, size);
  return { cycles, both, drift };
}

/** |Σ z|/Σ |z| over the marks, z each one's fundamental against the comb's. */
function coherenceOf(level: Float64Array, shape: CombShape): number {
  const count = level.length;
  const first = Math.floor(marksAt(shape, -0.5));
  const sums = Array.from({ length: Math.floor(marksAt(shape, 0.5)) - first + 1 }, () => [0, 0] as [number, number]);
  for (let at = 0; at < count; at++) {
    const mark = marksAt(shape, sampleAt(at, count));
    const angle = 2 * Math.PI * mark;
    const sum = sums[Math.floor(mark) - first]!;
    sum[0] += level[at]! * Math.cos(angle);
    sum[1] += level[at]! * Math.sin(angle);
  }
  const whole = sums.reduce(([re, im], [a, b]) => [re + a, im + b] as [number, number], [0, 0] as [number, number]);
  const apart = sums.reduce((sum, [re, im]) => sum + Math.hypot(re, im), 0);
  return apart > 0 ? Math.hypot(...whole) / apart : 0;
}
