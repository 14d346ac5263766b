import { butterflies } from './butterflies.ts';
import type { Fft } from './fft-plan.ts';
import type { Scratch } from './scratch.ts';

/**
 * Transforms *batch* signals at once, number n of signal b standing at [n *batch* + b]; the result replaces them.
 *
 * X_k = Σ x_n exp(−2πi k n/length)
 *
 * Stockham's order: every pass reads one half of the scratch and writes the other, so that nothing has to be sorted, and
 * what is next to each other is treated alike. Exchange `re` and `im` before and after for the inverse without its factor 1/length.
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
export function inverseTransform(plan: Fft, scratch: Scratch, batch: number): void {
  exchangeParts(scratch);
  transform(plan, scratch, batch);
  exchangeParts(scratch);
}

/** The real parts become the imaginary ones and the other way round: a reflection of the spectrum, apart from a factor. */
function exchangeParts(scratch: Scratch): void {
  [scratch.re, scratch.im] = [scratch.im, scratch.re];
  [scratch.otherRe, scratch.otherIm] = [scratch.otherIm, scratch.otherRe];
}
