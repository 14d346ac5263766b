import { chanceFrom } from '#core/chance/chance.ts';
import type { Picture, View } from './picture.ts';

/** From so many expected electrons on, the bell curve stands for their count. */
const many = 64;

/**
 * A picture as counts of electrons: photon noise, in proportion to the square root of the light.
 *
 * Every value is taken for the mean of a Poisson count of `electronsAtWhite` times itself, and replaced by a count drawn from
 * it. Channels count for themselves. Without `electronsAtWhite` the picture comes back as it is.
 */
export function withNoise(picture: Picture, { electronsAtWhite, seed = 0 }: View): Picture {
  if (electronsAtWhite === undefined) return picture;
  const chance = chanceFrom(seed);
  return {
    ...picture,
    light: picture.light.map((light) => count(light * electronsAtWhite, chance) / electronsAtWhite),
  };
}

/**
 * A Poisson count of the mean *expected*, 0 where that is below zero.
 *
 * Few are counted one after the other (Knuth, The Art of Computer Programming 2, 3.4.1; from memory), many drawn from the bell
 * curve of the same variance (Box and Muller) and rounded: the skewness that this leaves out is 1/√expected, an eighth and less.
 */
export function count(expected: number, chance: () => number): number {
  if (!(expected > 0)) return 0;
  if (expected >= many) {
    const bell = Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
    return Math.max(0, Math.round(expected + Math.sqrt(expected) * bell));
  }
  const least = Math.exp(-expected);
  let electrons = 0;
  for (let product = chance(); product > least; product *= chance()) electrons++;
  return electrons;
}
