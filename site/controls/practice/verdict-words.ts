import type { NotReady, Verdict } from '#core/practice/answer.ts';
import type { Problem } from '#core/practice/problem.ts';

/** What stands before the words of a verdict. Right and wrong answers say so in their own words. */
export const headings: Partial<Record<Verdict['kind'] | NotReady['kind'], string>> = {
  mistake: 'A common slip',
  'unit-slip': 'Check the unit',
  'not-ready': 'Not checked yet',
};

/** What is said of an answer: also where there is none yet. */
export const verdictWords = (marked: Verdict | NotReady, { kind }: Problem): string =>
  marked.words ||
  (kind === 'choice' ? 'Choose one of the answers first.' : 'Type an answer first, with any unit you like.');
