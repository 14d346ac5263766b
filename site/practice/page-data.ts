import { drawProblem } from '#core/practice/problem.ts';
import type { SheetKind } from '#core/practice/versions.ts';
import { nameOf } from '#site/controls/practice/name-of.ts';

/** A lesson as the page of practice knows it from the build. */
export interface PracticeLesson {
  readonly slug: string;
  readonly question: string;
  /** Its address. */
  readonly href: string;
  /** Its kinds of problem, each with the part of the lesson that teaches what it asks: an id in its page, and its heading. */
  readonly kinds: readonly { readonly id: string; readonly mends: string; readonly part: string }[];
}

/** What is said of a kind, by `lesson/family`; undefined for one that is no longer there. */
export interface KindWords {
  readonly lesson: PracticeLesson;
  readonly id: string;
  /** `Ring on a lens`. */
  readonly name: string;
  /** Where the lesson teaches it, and what stands above it there. */
  readonly mends: string;
  readonly part: string;
}

/** The words for a kind that a record names. */
export function wordsOf(kind: string, lessons: readonly PracticeLesson[]): KindWords | undefined {
  const [slug, id] = kind.split('/');
  const lesson = lessons.find((one) => one.slug === slug);
  const found = lesson?.kinds.find((one) => one.id === id);
  if (!lesson || !found) return undefined;
  return { lesson, id: found.id, name: nameOf(found), mends: `${lesson.href}#${found.mends}`, part: found.part };
}

/** What is said where the network does not give a lesson's problems. */
export const notFetched =
  'The problems could not be fetched. Try again when there is a network; nothing that you did is lost.';

/** What a slip was, in words with its numbers; a hint where it was none that is known. */
export function slipWords(families: readonly SheetKind[], kind: string, seed: number, mistake?: string): string {
  const [slug, id] = kind.split('/');
  const family = families.find((one) => one.lesson === slug && one.family.id === id)?.family;
  if (!family) return '';
  const problem = drawProblem(family, seed);
  return problem.mistakes.find((one) => one.id === mistake)?.because ?? `Hint: ${problem.hint}`;
}
