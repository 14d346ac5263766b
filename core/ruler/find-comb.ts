import { fitComb, type CombFit } from './comb-fit.ts';
import { combStarts, fewestMarks, finestPeriod } from './comb-start.ts';
import { densityAt, type CombShape } from './comb.ts';

/** What was found along a line: evenly spaced marks, or why there are none. */
export type FoundComb = ({ readonly outcome: 'comb' } & CombFit) | NoComb;

export interface NoComb {
  readonly outcome: 'no comb';
  readonly because: keyof typeof whyNone;
}

const whyNone = {
  'too short': 'The line is too short: it has to cross eight marks or more.',
  even: 'Nothing changes along the line: it shows one even tone.',
  'no pattern':
    'No even spacing was found along the line. Draw it across the marks, where no figures and no shadows cross them.',
  'too fine':
    'The marks are as fine as the pixels there, and may be a false pattern. Come closer, or use a coarser ruler.',
  uncertain: 'There is a pattern, but too faint to be measured. Draw a longer line, or where the marks are sharp.',
} as const;

/** A sentence that says why no comb was found, and what to do. */
export const noCombWords = ({ because }: NoComb): string => whyNone[because];

/**
 * Marks that agree less than that on where all of them stand are none. The fewer they are, the better chance makes them agree: noise, wandering tones and
 * uneven bars stay below this (`find-comb.test.ts`), rulers in noise and blur above.
 */
const leastCoherence = (marks: number) => 0.92 + 0.5 / marks;
/** What explains less of what varies is not what is seen there. */
const leastExplained = 0.25;
/** Share of itself to which the density has to be known. */
const mostUncertain = 0.01;

/**
 * Evenly spaced marks in a profile of light, seen in perspective or not, to a small part of a sample.
 *
 * @param profile evenly spaced samples along a line, light in any unit
 * @param near a comb that is known to be close: then none is looked for elsewhere
 * @returns the comb that explains most, with variances; or in words why there is none. A pattern finer than the pixels shows
 *   a false one now and then that no number tells from a true one: look whether every mark is met.
 *
 * Derived in [README](README.md#marks).
 *
 * @example findComb(profile).outcome // 'comb'
 */
export function findComb(profile: Float64Array, near?: CombShape): FoundComb {
  const none = (because: NoComb['because']): NoComb => ({ outcome: 'no comb', because });
  if (profile.length < fewestMarks * finestPeriod) return none('too short');
  if (!(Math.max(...extent(profile)) - Math.min(...extent(profile)) > 1e-4)) return none('even');
  const fits = (near ? [near] : combStarts(profile))
    .map((start) => fitComb(profile, start))
    .filter((fit) => fit !== undefined)
    .filter(({ coherence, explained, trusted }) => coherence > leastCoherence(trusted) && explained > leastExplained);
  const best = fits.sort((one, other) => weightOf(other) - weightOf(one))[0];
  if (!best) return none('no pattern');
  if (best.trusted < fewestMarks * 0.9) return none('too short');
  const finest = (profile.length - 1) / Math.max(densityAt(best, -0.5), densityAt(best, 0.5));
  if (finest < finestPeriod) return none('too fine');
  if (!(Math.sqrt(best.variances.cycles) < mostUncertain * best.cycles)) return none('uncertain');
  return { outcome: 'comb', ...best };
}

const weightOf = ({ coherence, explained }: CombFit) => explained * coherence ** 4;

function extent(profile: Float64Array): readonly [number, number] {
  return profile.reduce(([least, most], value) => [Math.min(least, value), Math.max(most, value)] as const, [
    Infinity,
    -Infinity,
  ] as readonly [number, number]);
}
