import { expect, it } from 'vitest';
import { markAttempt } from '#core/practice/answer.ts';
import { drawProblem } from '#core/practice/problem.ts';
import { ringsOnALens, whichLensGainsMore } from '#tests/support/example-families.ts';
import { headings, verdictWords } from './verdict-words.ts';

const [number, choice] = [drawProblem(ringsOnALens, 1), drawProblem(whichLensGainsMore, 1)];

it('asks for an answer where there is none, in the words of what is asked for', () => {
  for (const [problem, words] of [
    [number, /^Type an answer first/],
    [choice, /^Choose one/],
  ] as const) {
    const marked = markAttempt({ problem, text: '' });
    expect(headings[marked.kind]).toBe('Not checked yet');
    expect(verdictWords(marked, problem)).toMatch(words);
  }
});

it('says of any other answer what marking it has to say', () => {
  const marked = markAttempt({ problem: number, text: '1e9 mm' });
  expect(marked.words).not.toBe('');
  expect(verdictWords(marked, number)).toBe(marked.words);
});
