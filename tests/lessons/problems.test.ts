import { describe, expect, it } from 'vitest';
import type { ProblemFamily } from '#core/practice/family.ts';
import { drawProblem } from '#core/practice/problem.ts';
import { drawSheet, numbersOf } from '#core/practice/sheet.ts';
import { familyFaults } from '#tests/support/family-faults.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';

const lessons = (await everyLessonFile('problems.ts')).map(({ slug, exports }) => ({
  slug,
  families: (exports['families'] ?? []) as readonly ProblemFamily[],
}));

/** Of four kinds or more a sheet of eight has each twice: so many sets of numbers are plenty. */
const enough = 4;

describe.each(lessons)('the problems of $slug', ({ families }) => {
  it('come in four families or more, exported as `families`', () => {
    expect(families.length).toBeGreaterThanOrEqual(4);
  });

  it('have ids of their own, for the address names them', () => {
    const ids = families.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('are on no printed sheet twice with the same numbers, where a kind has enough of them', () => {
    const variety = new Map<ProblemFamily, Set<string>>();
    for (const family of families) {
      const sets = Array.from({ length: 60 }, (_, index) => numbersOf(drawProblem(family, index + 1)));
      variety.set(family, new Set(sets));
    }
    for (let seed = 1; seed <= 10; seed++) {
      const keys = drawSheet(families, seed)
        .filter(({ family }) => variety.get(family)!.size >= enough)
        .map((problem) => `${problem.family.id} ${numbersOf(problem)}`);
      expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
    }
  });

  it.each(families)('prove themselves: $id', (family) => {
    expect(familyFaults(family)).toEqual([]);
  });
});
