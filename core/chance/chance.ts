/** 2³² over the golden ratio: steps of it come back to no place before they have been everywhere. */
const goldenStep = 0x9e3779b9;

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
    state = (state + goldenStep) | 0;
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

/**
 * A number from 0 up to but not including 1 for a place in a grid of whole numbers, without any order to be seen: the same however often, and in
 * whatever order, places are asked for. For patterns that are sampled anywhere, where {@link chanceFrom} is for what comes in a row.
 *
 * @param column any whole number of 32 bits, and so *row* and *seed*
 * @returns each of the three mixed in turn, a step of {@link chanceFrom} apart
 *
 * @example chanceAt(0, 0, 0) // 0.827432...
 */
export function chanceAt(column: number, row: number, seed: number): number {
  const along = mixedBits((seed + goldenStep) ^ column);
  return mixedBits((along + goldenStep) ^ row) / 2 ** 32;
}
