import { chanceFrom } from '#core/chance/chance-from.ts';
import type { Picture } from './picture.ts';
import type { View } from './view.ts';

/** From so many expected electrons on, the bell curve stands for their count. */
const many = 64;

/**
 * A picture as counts of electrons: photon noise, in proportion to the square root of the light.
 *
 * Every value is taken for the mean of a Poisson count of `electronsAtWhite` times itself, and replaced by a count drawn from
 * it. Channels count for themselves. Counting adds its own error where there is a `readNoise`: a count may then come out below zero, and is
 * kept so, for the mean is right. Without `electronsAtWhite` the picture comes back as it is.
 */
export function withNoise(picture: Picture, { electronsAtWhite, readNoise = 0, seed = 0 }: View): Picture {
  if (electronsAtWhite === undefined) return picture;
  const chance = chanceFrom(seed);
  return {
    ...picture,
    light: picture.light.map((light) => {
      const counted = count(light * electronsAtWhite, chance);
      return (counted + (readNoise > 0 ? readNoise * bell(chance) : 0)) / electronsAtWhite;
    }),
  };
}

/**
 * A Poisson count of the mean *expected*, 0 where that is below zero.
 *
 * Few are counted one after the other (Knuth, The Art of Computer Programming 2, 3.4.1; from memory), many drawn from the bell
 * curve of the same variance (Box and Muller) and rounded: the skewness that this leaves out is 1/√expected, an eighth and less.
 */
export function count(expected: number, chance: () => number): number {
  // Of 32 random bits no bell curve reaches eight of its deviations: such a count is never below zero.
  if (expected >= many) return Math.round(expected + Math.sqrt(expected) * bell(chance));
  const least = Math.exp(-expected);
  let electrons = 0;
  for (let product = chance(); product > least; product *= chance()) electrons++;
  return electrons;
}

/** A value of the bell curve about 0 of the standard deviation 1 (Box and Muller). */
function bell(chance: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}
