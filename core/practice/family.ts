import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Draw } from './random.ts';
import { lastNumber, type WorkingStep } from './step.ts';
import type { Known } from './text.ts';
import type { Tolerance } from './tolerance.ts';

/** A wrong route that learners take: where it leads, and why. */
export interface Mistake<Given = Known, Answer = number | string> {
  readonly id: string;
  /**
   * What it gives for these numbers: base unit, or the option it leads to. Undefined where, with these numbers, it leads to what is right or
   * where another slip of the family leads: then it is none of this problem's.
   */
  readonly value: (given: Given) => Answer | undefined;
  /** Why that came out and what to do instead; `{id}` marks stand for what is given. */
  readonly because: string;
}

interface Plan<Given, Answer> {
  /** Letters, digits and hyphens; one meaning within its lesson, for the address carries it. */
  readonly id: string;
  /** The question, with `{id}` marks for what is given. */
  readonly question: string;
  /** Draws what is given: quantities by id in base units, words by any other name. */
  readonly givens: (draw: Draw) => Given;
  /** The exact answer. It may refuse givens with OutOfRange: others are then drawn. */
  readonly answer: (given: Given) => Answer;
  readonly mistakes: readonly Mistake<Given, Answer>[];
  /** The next thought to have, without numbers of the answer. */
  readonly hint: string;
  /** The whole way to the answer. In a family that asks for a number the last step gives it. */
  readonly working: readonly WorkingStep<Given>[];
}

/** Problems whose answer is a quantity: a measure, or a whole number where the vocabulary writes it so. */
export interface NumberPlan<Given = Known> extends Plan<Given, number> {
  readonly asks: QuantityName;
  readonly tolerance: Tolerance;
}

/** Problems whose answer is one of a few. */
export interface ChoicePlan<Given = Known, Option extends string = string> extends Plan<Given, Option> {
  /** What the reader chooses from, in this order, by the name that `answer` returns. */
  readonly options: Readonly<Record<Option, string>>;
}

export interface NumberFamily extends NumberPlan {
  readonly kind: 'number';
}

export interface ChoiceFamily extends ChoicePlan {
  readonly kind: 'choice';
}

/** One kind of problem, of which every seed gives another. */
export type ProblemFamily = NumberFamily | ChoiceFamily;

/** Names that are quantities hold numbers, all others words: a misspelled id does not compile. */
type Named<Given> = { readonly [Name in keyof Given]: Name extends QuantityName ? number : string };

/**
 * A family that asks for a number. The functions of *plan* know by its type what `givens` draws; everything else sees one type of
 * family, whose functions are only ever called with what its own `givens` has drawn. The answer is the last number of the working unless
 * the plan says otherwise.
 */
export function numberFamily<Given extends Named<Given>>(
  plan: Omit<NumberPlan<Given>, 'answer'> & Partial<Pick<NumberPlan<Given>, 'answer'>>,
): NumberFamily {
  const { working } = plan as unknown as NumberPlan;
  return {
    answer: (given) => lastNumber(working, given),
    ...(plan as unknown as Omit<NumberPlan, 'answer'>),
    kind: 'number',
  };
}

/** A family that asks for a choice; see {@link numberFamily}. */
export function choiceFamily<Given extends Named<Given>, Option extends string>(
  plan: ChoicePlan<Given, Option>,
): ChoiceFamily {
  return { ...(plan as unknown as ChoicePlan), kind: 'choice' };
}
