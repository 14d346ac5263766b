import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { families } from '#tests/support/example-families.ts';
import { numbersOf } from './sheet.ts';
import { drawVersions, type SheetKind } from './versions.ts';

const kinds: readonly SheetKind[] = families.map((family, index) => ({ lesson: `lesson-${index % 2}`, family }));
const seeds = fc.integer({ min: 1, max: 999_999 });
const names = (sheet: ReturnType<typeof drawVersions>[number]) =>
  sheet.map(({ lesson, problem }) => `${lesson}/${problem.family.id}`);

describe('drawVersions', () => {
  it('asks the same kinds in the same order in every version, and no question twice in any two of them', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const versions = drawVersions(kinds, { seed, count: 6, versions: 4 });
        for (const sheet of versions) expect(names(sheet)).toEqual(names(versions[0]!));
        const questions = versions.flat().map(({ problem }) => problem.question);
        expect(new Set(questions).size).toBe(24);
      }),
      { seed: 3, numRuns: 30 },
    );
  });

  it('leaves a version as it is when more are drawn, and gives the same for the same seed', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const two = drawVersions(kinds, { seed, count: 5, versions: 2 });
        expect(drawVersions(kinds, { seed, count: 5, versions: 4 }).slice(0, 2)).toEqual(two);
      }),
      { seed: 4, numRuns: 10 },
    );
  });

  it('takes lessons in turn, and each kind once before any comes again', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const [sheet] = drawVersions(kinds, { seed, count: 2 * kinds.length, versions: 1 });
      const [first, second, third] = sheet!.map(({ lesson }) => lesson);
      expect(first).not.toBe(second);
      expect(first).toBe(third);
      expect(new Set(names(sheet!.slice(0, kinds.length))).size).toBe(kinds.length);
    }
  });

  it('gives other seeds another order', () => {
    const firsts = [1, 2, 3, 4, 5, 6, 7, 8].map(
      (seed) => names(drawVersions(kinds, { seed, count: 1, versions: 1 })[0]!)[0],
    );
    expect(new Set(firsts).size).toBeGreaterThan(1);
  });

  it('asks the same numbers in another order only where there are no others, and repeats nothing on one sheet', () => {
    const orders = ['3 mm, 5 mm', '5 mm, 3 mm', '7 mm, 9 mm'];
    const family = {
      ...families[1],
      question: 'Which of these: {these}?',
      givens: (draw: Parameters<(typeof families)[1]['givens']>[0]) => ({
        ...families[1].givens(draw),
        these: draw.pick(orders),
      }),
    };
    const versions = drawVersions([{ lesson: 'one', family }], { seed: 1, count: 8, versions: 2 });
    for (const sheet of versions) {
      expect(sheet).toHaveLength(3);
      expect(new Set(sheet.map(({ problem }) => problem.question)).size).toBe(3);
    }
    const [one, two] = versions[0]!;
    expect(numbersOf(one!.problem)).not.toBe(numbersOf(two!.problem));
  });

  it.each([0, 1.5, NaN, 1_000_000])('refuses the number %d', (seed) => {
    expect(() => drawVersions(kinds, { seed, count: 1, versions: 1 })).toThrow(RangeError);
  });
});
