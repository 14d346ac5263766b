/** Picks the numbers of a problem. The same seed gives the same picks in every browser. */
export interface Draw {
  /** One of *list*, which holds at least one thing. */
  readonly pick: <const T>(list: readonly T[]) => T;
  /** One of *least*, *least + step*, ... up to *most*, each as often. */
  readonly between: (least: number, most: number, step: number) => number;
  /** A number with so many significant *figures* (2 if not said), as often in each doubling from *least*, above 0, to *most*. */
  readonly logStep: (least: number, most: number, figures?: number) => number;
}

/**
 * A whole number from 0 to 2³² − 1 for a text, the same wherever it is computed: FNV-1a at 32 bits, over the text's UTF-16 units.
 *
 * Source: Fowler, Noll, Vo and Eastlake, The FNV Non-Cryptographic Hash Algorithm (draft-eastlake-fnv).
 *
 * @example seedFromText('a') // 0xe40c292c
 */
export function seedFromText(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

/**
 * Numbers from 0 up to but not including 1, the next with each call: SplitMix at 32 bits. Neighbouring seeds are as good as distant ones.
 *
 * Source: Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators (OOPSLA 2014); mixing by {@link mixedBits}.
 */
export function chanceFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    return mixedBits(state) / 2 ** 32;
  };
}

/** The 32 bits of *bits* mixed so that each depends on all: the last step of MurmurHash3 (Appleby, SMHasher; public domain). */
export function mixedBits(bits: number): number {
  let mixed = bits;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}

/** The picks that belong to *seed*. */
export function drawFrom(seed: number): Draw {
  const chance = chanceFrom(seed);
  const below = (count: number) => Math.floor(chance() * count);
  return {
    pick: (list) => list[below(list.length)]!,
    // The billionth keeps a last step that binary fractions let fall short.
    between: (least, most, step) => decimal(least + below(Math.floor((most - least) / step + 1e-9) + 1) * step, 12),
    logStep: (least, most, figures = 2) =>
      Math.min(most, Math.max(least, decimal(least * (most / least) ** chance(), figures))),
  };
}

/** *value* to so many significant figures: 0.1 + 0.2 becomes 0.3. */
function decimal(value: number, figures: number): number {
  return Number(value.toPrecision(figures));
}
