import type { Stage } from './fft-plan.ts';

/** Real and imaginary halves of complex numbers, and room for as many again. */
export interface Scratch {
  re: Float32Array;
  im: Float32Array;
  otherRe: Float32Array;
  otherIm: Float32Array;
  /** makes a pass in a way of its own; `butterflies` if absent. Strides then have to be multiples of 4. */
  run?: (scratch: Scratch, stage: Stage, stride: number) => void;
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
