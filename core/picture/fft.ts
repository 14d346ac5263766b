import { butterflies } from './butterflies.ts';

/** Everything about a length that its transforms have in common. Made by {@link fftOf}. */
export interface Fft {
  readonly length: number;
  readonly stages: readonly Stage[];
}

/** One pass over the data: *parts* transforms of what is *radix* apart, each then turned by its twiddles. */
export interface Stage {
  readonly radix: Radix;
  readonly parts: number;
  /** cosine and sine of −2π p j/(radix parts) for part p = 0, 1, ... and j = 1 … radix − 1 */
  readonly twiddles: Float32Array;
}

export type Radix = 2 | 3 | 4 | 5;

/** Real and imaginary halves of complex numbers, and room for as many again. */
export interface Scratch {
  re: Float32Array;
  im: Float32Array;
  otherRe: Float32Array;
  otherIm: Float32Array;
  /** makes a pass in a way of its own; `butterflies` if absent. Strides then have to be multiples of 4. */
  run?: (scratch: Scratch, stage: Stage, stride: number) => void;
}

const known = new Map<number, Fft>();

/**
 * The passes of a fast Fourier transform.
 *
 * @param length a whole number from 1 whose only prime factors are 2, 3 and 5: see {@link fastLength}
 * @throws RangeError for any other
 */
export function fftOf(length: number): Fft {
  let plan = known.get(length);
  if (!plan) known.set(length, (plan = { length, stages: stagesOf(length) }));
  return plan;
}

function stagesOf(length: number): Stage[] {
  const stages: Stage[] = [];
  let rest = length;
  while (rest > 1) {
    const radix = ([4, 2, 3, 5] as const).find((factor) => rest % factor === 0);
    if (!radix) break;
    const parts = rest / radix;
    const twiddles = new Float32Array(2 * (radix - 1) * parts);
    for (let part = 0, at = 0; part < parts; part++)
      for (let j = 1; j < radix; j++) {
        const angle = (-2 * Math.PI * part * j) / rest;
        twiddles[at++] = Math.cos(angle);
        twiddles[at++] = Math.sin(angle);
      }
    stages.push({ radix, parts, twiddles });
    rest = parts;
  }
  if (rest !== 1)
    throw new RangeError(`a transform has the length ${length}; accepted: products of 2, 3 and 5 from 1 up`);
  return stages;
}

/**
 * A length from *least* up that transforms fast: without prime factors but 2, 3 and 5, and the cheapest of those up to a tenth longer.
 *
 * What a place costs in one pass of each radix was measured; four is counted as two twos.
 */
export function fastLength(least: number): number {
  const start = Math.max(1, Math.ceil(least));
  let [best, lowest] = [NaN, Infinity];
  for (let length = start; length <= start * 1.1 || !(lowest < Infinity); length++) {
    const cost = length * passesOf(length);
    if (cost < lowest) [best, lowest] = [length, cost];
  }
  return best;
}

const costs = [
  [2, 0.55],
  [3, 1.05],
  [5, 1.7],
] as const;

function passesOf(length: number): number {
  let [rest, cost] = [length, 0.5];
  for (const [factor, each] of costs)
    while (rest % factor === 0) {
      rest /= factor;
      cost += each;
    }
  return rest === 1 ? cost : Infinity;
}

/** Places that so many signals take side by side: whole vectors of four, the last of them perhaps not filled. */
export const lanesFor = (count: number) => (count + 3) & ~3;

/** Room for *batch* transforms of a length. */
export function scratchFor(length: number, batch: number): Scratch {
  const [re, im, otherRe, otherIm] = [0, 0, 0, 0].map(() => new Float32Array(length * batch)) as [
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  return { re, im, otherRe, otherIm };
}

/**
 * Transforms *batch* signals at once, number n of signal b standing at [n *batch* + b]; the result replaces them.
 *
 * X_k = Σ x_n exp(−2πi k n/length)
 *
 * Stockham's order: every pass reads one half of the scratch and writes the other, so that nothing has to be sorted, and
 * what is next to each other is treated alike. Turn `re` and `im` round before and after for the inverse without its factor 1/length.
 *
 * Source: Van Loan, Computational Frameworks for the Fast Fourier Transform (SIAM 1992), 1.7 (from memory).
 */
export function transform(plan: Fft, scratch: Scratch, batch: number): void {
  let stride = batch;
  for (const stage of plan.stages) {
    if (scratch.run) scratch.run(scratch, stage, stride);
    else butterflies[stage.radix](scratch, stage, stride);
    [scratch.re, scratch.otherRe] = [scratch.otherRe, scratch.re];
    [scratch.im, scratch.otherIm] = [scratch.otherIm, scratch.im];
    stride *= stage.radix;
  }
}

/** The inverse of {@link transform}, times the length. */
export function transformBack(plan: Fft, scratch: Scratch, batch: number): void {
  turnRound(scratch);
  transform(plan, scratch, batch);
  turnRound(scratch);
}

function turnRound(scratch: Scratch): void {
  [scratch.re, scratch.im] = [scratch.im, scratch.re];
  [scratch.otherRe, scratch.otherIm] = [scratch.otherIm, scratch.otherRe];
}
