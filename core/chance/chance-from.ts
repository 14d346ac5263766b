import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * Numbers from 0 up to but not including 1, the next with each call: xoroshiro128+, 32 bits of it.
 *
 * The generator is begun 2⁶⁴ steps behind its seed, where no bit is left as the seed had it: neighbouring seeds are as good as distant ones.
 *
 * @param seed a whole number, of which 32 bits count; the same seed, the same numbers, in every browser
 *
 * Source: Blackman and Vigna, Scrambled linear pseudorandom number generators, ACM Trans. Math. Softw. 47 (2021), 36 (from memory).
 */
export function chanceFrom(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  generator.jump();
  return () => (generator.next() >>> 0) / 2 ** 32;
}
