/** Everything about a length that its transforms have in common. Made by {@link fftOf}. */
export interface Fft {
  readonly length: number;
  readonly stages: readonly Stage[];
}

/** One pass over the data: *parts* transforms of what is *radix* apart, each then multiplied by its twiddles. */
export interface Stage {
  readonly radix: Radix;
  readonly parts: number;
  /** cosine and sine of −2π p j/(radix parts) for part p = 0, 1, ... and j = 1 … radix − 1 */
  readonly twiddles: Float32Array;
}

export type Radix = 2 | 3 | 4 | 5;

const known = new Map<number, Fft>();

/**
 * The passes of a fast Fourier transform.
 *
 * @param length a whole number from 1 whose only prime factors are 2, 3 and 5: see `fastLength`
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
