import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { families } from '#tests/support/example-families.ts';
import { drawSheet, numbersOf, problemsOnSheet } from './sheet.ts';

const seeds = fc.integer({ min: 1, max: 999_999 });
const namesOn = (seed: number) => drawSheet(families, seed).map(({ family, seed: own }) => `${family.id}:${own}`);

describe('drawSheet', () => {
  it('draws each kind in turn, and the next sheet goes on with the next numbers', () => {
    expect(drawSheet(families, 1).map(({ family }) => family.id)).toEqual(
      [...families, ...families].map(({ id }) => id),
    );
    const three = families.slice(0, 3);
    expect(drawSheet(three, 2).map(({ family }) => three.indexOf(family as never))).toEqual([2, 0, 1, 2, 0, 1, 2, 0]);
    expect(drawSheet(three, 2)[0]!.seed).toBe(3);
  });

  it('draws the same eight for the same seed, none of them twice', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const sheet = drawSheet(families, seed);
        expect(new Set(sheet.map(({ question }) => question)).size).toBe(problemsOnSheet);
        expect(namesOn(seed)).toEqual(namesOn(seed));
      }),
      { seed: 8, numRuns: 30 },
    );
  });

  it('asks no question again with the same numbers in another order, while there are others', () => {
    const orders = ['3 mm, 5 mm', '5 mm, 3 mm', '7 mm, 9 mm', '9 mm, 7 mm'];
    const family = {
      ...families[1],
      question: 'Which of these: {these}?',
      givens: (draw: Parameters<(typeof families)[1]['givens']>[0]) => ({
        ...families[1].givens(draw),
        these: draw.pick(orders),
      }),
    };
    for (const seed of [1, 2, 3, 4, 5]) {
      const sheet = drawSheet([family], seed);
      // Two sets of numbers, then the same in the other order: there are no others.
      expect(sheet).toHaveLength(4);
      expect(numbersOf(sheet[0]!)).not.toBe(numbersOf(sheet[1]!));
    }
  });

  it('stays short where there are no more different questions', () => {
    const one = { ...families[1], question: 'The same for all numbers?' };
    expect(drawSheet([one], 1)).toHaveLength(1);
    expect(drawSheet([one, families[0]], 1)).toHaveLength(problemsOnSheet);
  });

  it('refuses what is no seed', () => {
    expect(() => drawSheet(families, 0.5)).toThrow(RangeError);
  });
});
