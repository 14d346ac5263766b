import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { NumberProblem, Problem, RecognisedMistake } from './problem.ts';
import { isWithin } from './tolerance.ts';
import { greatestSlip, unitSlip } from './unit-slip.ts';
import { wrongWords, type Direction } from './wrong-words.ts';

/** What a learner did: typed *text*, or chose the option of that name; '' for nothing yet. */
export interface Attempt {
  readonly problem: Problem;
  readonly text: string;
}

/** Not an answer yet, so neither right nor wrong; *words* say what is expected. They are '' for a blank. */
export interface NotReady {
  readonly kind: 'not-ready';
  readonly why: 'blank' | 'unreadable' | 'out-of-range';
  readonly words: string;
}

/** An answer that can be marked: a number in the base unit, or an option's name. */
export interface ReadyAnswer {
  readonly kind: 'ready';
  readonly problem: Problem;
  readonly value: number | string;
}

/** What a marked answer was; *words* tell the learner. */
export type Verdict = { readonly words: string } & (
  | { readonly kind: 'right' }
  | { readonly kind: 'mistake'; readonly mistake: RecognisedMistake }
  /** The figures are right; the size is off by *factor*, such as 1000 or 0.1. */
  | { readonly kind: 'unit-slip'; readonly factor: number }
  | { readonly kind: 'wrong'; readonly direction?: Direction }
);

/** Reads and validates an attempt, then scores it. Only what can be read is marked. */
export function markAttempt(attempt: Attempt): Verdict | NotReady {
  const answer = readAttempt(attempt);
  return answer.kind === 'ready' ? verdictOn(answer) : answer;
}

/** What an attempt says, if it says something that can be marked. */
export function readAttempt({ problem, text }: Attempt): ReadyAnswer | NotReady {
  if (problem.kind === 'choice') {
    if (text === '') return notReady('blank', '');
    if (Object.hasOwn(problem.family.options, text)) return { kind: 'ready', problem, value: text };
    return notReady('unreadable', 'Choose one of the answers first.');
  }
  const { asks } = problem.family;
  const reading = readQuantity(asks, text);
  if (reading.kind === 'blank') return notReady('blank', '');
  if (reading.kind === 'value' || (reading.kind === 'out-of-range' && mayBeMarked(problem, reading.value))) {
    return { kind: 'ready', problem, value: reading.value };
  }
  return notReady(reading.kind, reading.message);
}

/** Beyond the sensible range there is room for a mistake that leads there, a depth of nothing say, and for a slip of unit. */
function mayBeMarked(problem: NumberProblem, value: number): boolean {
  return problem.mistakes.some((one) => isAsGoodAs(problem, value, one.value)) || mayBeSlip(problem.family.asks, value);
}

/** A slip of unit is no more than so many times off; a wrong sign is none. */
function mayBeSlip(asks: QuantityName, value: number): boolean {
  const { least, most } = quantityOf(asks);
  return value >= (least > 0 ? least / greatestSlip : least * greatestSlip) && value <= most * greatestSlip;
}

/** The verdict on an answer: right, a recognised mistake, a slip of unit, or wrong, in this order. */
export function verdictOn({ problem, value }: ReadyAnswer): Verdict {
  if (isAsGoodAs(problem, value, problem.answer)) return { kind: 'right', words: rightWords(problem) };
  const mistake = problem.mistakes.find((one) => isAsGoodAs(problem, value, one.value));
  if (mistake) return { kind: 'mistake', mistake, words: mistake.because };
  if (problem.kind === 'choice') return { kind: 'wrong', words: 'Not this one. The hint may help.' };
  return unitSlip(problem, value as number) ?? { kind: 'wrong', ...wrongWords(problem, value as number) };
}

function isAsGoodAs(problem: Problem, value: number | string, target: number | string): boolean {
  if (problem.kind === 'choice') return value === target;
  return isWithin(value as number, target as number, problem.family.tolerance);
}

function rightWords({ kind, family, answer }: Problem): string {
  return kind === 'number' ? `Right: ${printQuantity(family.asks, answer)}.` : 'Right.';
}

function notReady(why: NotReady['why'], words: string): NotReady {
  return { kind: 'not-ready', why, words };
}
