import type { Found } from '#core/quantity/answers-from.ts';
import { refusalInWords, type Answer } from './answer.ts';

/** What is known, by name, base units; without what has no number. */
export type Numbers<Name extends string> = { readonly [Known in Name]?: number };

/**
 * A lesson's own words for an answer at its edges: where there is *none*, where it is *infinite*; or by its value, undefined where it has
 * none, and by all else that is known. Undefined words leave the number as it is.
 */
export type Wording<Name extends string = string> =
  | { readonly none?: string; readonly infinite?: string }
  | ((value: number | undefined, known: Numbers<Name>) => string | undefined);

export type Words<Name extends string = string> = Readonly<Partial<Record<Name, Wording>>>;

/**
 * All that is known as it is shown: bare numbers, numbers with words, words alone.
 *
 * What has no number because it leans on something that has none says what that says. Where a lesson has no words, the core's refusal
 * stands.
 */
export function worded({ numbers, lacks }: Found, words: Words): Readonly<Record<string, Answer>> {
  const answers: Record<string, Answer> = {};
  for (const [name, value] of Object.entries(numbers)) {
    const said = saidOf(words[name], value, numbers);
    answers[name] = said === undefined ? value : { words: said, value };
  }
  for (const [name, { of, refused }] of Object.entries(lacks)) {
    if (name in answers) continue;
    answers[name] = { words: saidOf(words[of], undefined, numbers) ?? (refused ? refusalInWords(refused) : 'none') };
  }
  return answers;
}

function saidOf(wording: Wording | undefined, value: number | undefined, known: Numbers<string>): string | undefined {
  if (typeof wording === 'function') return wording(value, known);
  return value === undefined ? wording?.none : value === Infinity ? wording?.infinite : undefined;
}
