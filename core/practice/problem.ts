import { OutOfRange } from '#core/quantity/errors.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { practiceText } from './address.ts';
import type { ChoiceFamily, NumberFamily, ProblemFamily } from './family.ts';
import { seedFromText } from '#core/chance/seed-from-text.ts';
import { drawFrom } from './random.ts';
import { requireSeed } from './seed.ts';
import { filledText, type Known } from './text.ts';
import { marginAt } from './tolerance.ts';

/** Where a wrong route leads with the numbers of one problem. */
export interface RecognisedMistake<Answer = number | string> {
  readonly id: string;
  readonly value: Answer;
  /** Why that came out, in words with this problem's numbers. */
  readonly because: string;
}

interface Drawn<Family, Answer> {
  readonly family: Family;
  readonly seed: number;
  readonly given: Known;
  readonly question: string;
  readonly hint: string;
  readonly answer: Answer;
  readonly mistakes: readonly RecognisedMistake<Answer>[];
}

export type NumberProblem = Drawn<NumberFamily, number> & { readonly kind: 'number' };
export type ChoiceProblem = Drawn<ChoiceFamily, string> & { readonly kind: 'choice' };

/** A family's problem with one seed: its numbers, its question, its answer and where each wrong route leads. */
export type Problem = NumberProblem | ChoiceProblem;

const draws = 200;

/**
 * The problem of *family* with the number *seed*, the same in every browser.
 *
 * Numbers are drawn anew, still by the seed alone, until the problem is fair: the answer lies within the vocabulary's range, and no
 * accepted answer is also what a mistake gives, nor do two mistakes give the same.
 *
 * @throws RangeError for a seed that is not a whole number from 1 to 999999
 * @throws Error where 200 draws in a row are unfair, with what was wrong with the last: the family needs other givens or mistakes
 */
export function drawProblem(family: ProblemFamily, seed: number): Problem {
  requireSeed(seed);
  const draw = drawFrom(seedFromText(practiceText({ family: family.id, seed })));
  let unfair = '';
  for (let drawn = 0; drawn < draws; drawn++) {
    const given = family.givens(draw);
    try {
      const answer = family.answer(given);
      const mistakes = family.mistakes.flatMap(({ id, value: led, because }) => {
        const value = led(given);
        return value === undefined ? [] : [{ id, value, because: filledText(because, given) }];
      });
      unfair = unfairness(family, answer, mistakes);
      if (unfair === '') {
        const [question, hint] = [filledText(family.question, given), filledText(family.hint, given)];
        return { kind: family.kind, family, seed, given, question, hint, answer, mistakes } as Problem;
      }
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      unfair = error.message;
    }
  }
  throw new Error(`${family.id}, number ${seed}: no fair problem in ${draws} draws; the last: ${unfair}`);
}

/** What makes a problem unfair, in words for its author; '' where nothing does. */
function unfairness(family: ProblemFamily, answer: number | string, mistakes: readonly RecognisedMistake[]): string {
  const values = [{ id: 'answer', value: answer }, ...mistakes];
  const impossible = values.find(({ value }, index) => !isPossible(family, value, index === 0));
  if (impossible) return `the ${impossible.id} is ${impossible.value}`;
  for (const [index, { id, value }] of values.entries()) {
    const other = values.slice(index + 1).find((one) => !areApart(family, value, one.value));
    if (other) return `the ${id} is ${value}, the ${other.id} ${other.value}: too near to tell apart`;
  }
  return '';
}

/** True for an option; for a finite number, and if it is the answer, for one that the vocabulary's range and the tolerance allow. */
function isPossible(family: ProblemFamily, value: number | string, isAnswer: boolean): boolean {
  if (family.kind === 'choice') return Object.hasOwn(family.options, value);
  const { least, most } = quantityOf(family.asks);
  const hasMargin = value !== 0 || 'absolute' in family.tolerance;
  return (
    Number.isFinite(value) && (!isAnswer || (hasMargin && least <= (value as number) && (value as number) <= most))
  );
}

/** True where nothing a learner could answer counts as both. */
function areApart(family: ProblemFamily, one: number | string, other: number | string): boolean {
  if (family.kind === 'choice') return one !== other;
  const [a, b] = [one as number, other as number];
  return Math.abs(a - b) > (marginAt(a, family.tolerance) + marginAt(b, family.tolerance)) * (1 + 1e-9);
}
