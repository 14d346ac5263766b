import { describe, expect, it } from 'vitest';
import type { ProblemFamily } from '#core/practice/family.ts';
import { familyFaults } from '#tests/support/family-faults.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';

const lessons = (await everyLessonFile('problems.ts')).map(({ slug, exports }) => ({
  slug,
  families: (exports['families'] ?? []) as readonly ProblemFamily[],
}));

describe.each(lessons)('the problems of $slug', ({ families }) => {
  it('come in four families or more, exported as `families`', () => {
    expect(families.length).toBeGreaterThanOrEqual(4);
  });

  it('have ids of their own, for the address names them', () => {
    const ids = families.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(families)('prove themselves: $id', (family) => {
    expect(familyFaults(family)).toEqual([]);
  });
});
