import { expect, it } from 'vitest';
import { ringsOnALens } from '#tests/support/example-families.ts';
import { otherNumbers } from './other-numbers.ts';
import { drawProblem } from './problem.ts';
import { mostSeed, nextSeed } from './seed.ts';

/** The same family with two subjects to draw from and nothing else. */
const few = {
  ...ringsOnALens,
  question: 'A {subject}',
  givens: (draw: Parameters<typeof ringsOnALens.givens>[0]) => ({
    ...ringsOnALens.givens(draw),
    subject: draw.pick(['bay leaf', 'drawing pin']),
  }),
};
const questions = (from: number) => [drawProblem(few, from).question, drawProblem(few, nextSeed(from)).question];

it('passes over numbers that draw the same problem again', () => {
  const seeds = Array.from({ length: 40 }, (_, index) => index + 1);
  expect(seeds.some((seed) => questions(seed)[0] === questions(seed)[1])).toBe(true);
  for (const seed of seeds) {
    const problem = drawProblem(few, seed);
    const other = otherNumbers(problem);
    expect(drawProblem(few, other).question).not.toBe(problem.question);
    for (let between = nextSeed(seed); between !== other; between = nextSeed(between))
      expect(drawProblem(few, between).question).toBe(problem.question);
  }
});

it('ends where a kind asks one thing alone, with another number, and goes on from the last to the first', () => {
  const single = { ...ringsOnALens, question: 'Which?' };
  expect(otherNumbers(drawProblem(single, 5))).toBe(36);
  expect(otherNumbers(drawProblem(single, mostSeed))).toBe(31);
});
