import { printQuantity } from '#core/quantity/print.ts';
import type { NumberProblem } from './problem.ts';
import { marginAt } from './tolerance.ts';

/** Which way a wrong answer is off. */
export type Direction = 'too-large' | 'too-small';

/** How many margins from the answer still count as a near miss. */
const nearMiss = 3;

/** Which way a wrong number is off and by how much, without giving the answer; a near miss hears what is allowed. */
export function wrongWords(problem: NumberProblem, value: number): { direction: Direction; words: string } {
  const { answer, family } = problem;
  const { asks, tolerance } = family;
  const direction = value > answer ? 'too-large' : 'too-small';
  const off = howFarOff(problem, value, direction === 'too-large' ? 'too large' : 'too small');
  if (Math.abs(value - answer) > nearMiss * marginAt(answer, tolerance))
    return { direction, words: `Not yet: ${off}.` };
  const allowed = 'absolute' in tolerance ? printQuantity(asks, tolerance.absolute) : percent(tolerance.relative);
  return { direction, words: `Close: ${off}. Up to ${allowed} counts as right, because ${tolerance.because}.` };
}

function howFarOff({ family: { asks, tolerance }, answer }: NumberProblem, value: number, way: string): string {
  if ('absolute' in tolerance) return `${way} by about ${printQuantity(asks, Math.abs(value - answer))}`;
  const ratio = value / answer;
  if (!(ratio > 0)) return way;
  const times = Math.max(ratio, 1 / ratio);
  return times < 1.5 ? `${way} by about ${percent(ratio - 1)}` : `about ${twoFigures(times)} times ${way}`;
}

function percent(share: number): string {
  return `${twoFigures(100 * Math.abs(share))}\u202f%`;
}

function twoFigures(value: number): number {
  return Number(value.toPrecision(2));
}
