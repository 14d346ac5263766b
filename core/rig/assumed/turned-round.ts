import type { PossibleLenses } from './known-lens.ts';
import { usualRearProtrusion } from './usual-rear-protrusion.ts';

/**
 * The lenses between which one lies that is turned round: what stands out behind its mount is foremost then, and counts.
 *
 * @param lenses see `possibleLenses`
 * @returns the same where the protrusion is known; else each with the least and the most that is assumed, and it named among what is assumed
 *
 * Source: least and most at the corners of what is assumed, [README](README.md#what-is-assumed).
 */
export function turnedRound(lenses: PossibleLenses): PossibleLenses {
  const { usual, extremes, assumed } = lenses;
  if (usual.rearProtrusion !== undefined) return lenses;
  const ends = [usualRearProtrusion.least, usualRearProtrusion.most];
  const taken = { ...usual, rearProtrusion: usualRearProtrusion.usual };
  return {
    ...lenses,
    usual: taken,
    extremes: [taken, ...extremes.flatMap((lens) => ends.map((rearProtrusion) => ({ ...lens, rearProtrusion })))],
    assumed: [...assumed, 'rear-protrusion'],
  };
}
