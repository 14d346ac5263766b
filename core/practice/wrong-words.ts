import { percent, printQuantity } from '#core/quantity/print.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { NumberProblem } from './problem.ts';
import { marginAt } from './tolerance.ts';

/** Which way a wrong answer is off. */
export type Direction = 'too-large' | 'too-small';

/** How many margins from the answer still count as a near miss. */
const nearMiss = 3;

/** How far off is said in such steps: from a per cent or a difference the answer would follow. */
const factors = [100, 10, 5, 2];

/** Which way a wrong number is off and how roughly, without giving the answer; a near miss hears what is allowed. */
export function wrongWords(problem: NumberProblem, value: number): { direction: Direction; words: string } {
  const { answer, family } = problem;
  const { asks, tolerance } = family;
  const direction = value > answer ? 'too-large' : 'too-small';
  const way = direction === 'too-large' ? 'too large' : 'too small';
  // Of whole numbers only the answer's neighbours would be near.
  const isNear =
    quantityOf(asks).writing !== 'whole' && Math.abs(value - answer) <= nearMiss * marginAt(answer, tolerance);
  if (!isNear) return { direction, words: `Not yet: ${way}${howFarOff(value / answer)}.` };
  const allowed = 'absolute' in tolerance ? printQuantity(asks, tolerance.absolute) : percent(tolerance.relative);
  return {
    direction,
    words: `Close: a little ${way}. Up to ${allowed} counts as right, because ${tolerance.because}.`,
  };
}

/** Nothing below the smallest factor, nor where one of the two numbers is zero or they differ in sign. */
function howFarOff(ratio: number): string {
  if (!(ratio > 0 && ratio < Infinity)) return '';
  const times = factors.find((factor) => Math.max(ratio, 1 / ratio) > factor);
  return times === undefined ? '' : `, by a factor of more than ${times}`;
}
