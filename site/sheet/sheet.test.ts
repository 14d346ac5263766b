import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { course } from '#site/course.ts';
import { formulaTopics } from '#site/formula-topics.ts';
import { lessonSlugs } from '#tests/support/lessons.ts';
import { root } from '#tests/support/run.ts';
import { onCard } from './questions.ts';
import { formulaName, formulaSheet, sourceInWords } from './sheet.ts';

const sheet = formulaSheet();
const questions = sheet.flatMap((subject) => subject.questions);
const onSheet = questions.flatMap(({ formulas }) => formulas);
const all = formulaTopics().flatMap(({ formulas }) => formulas);
const sorted = (names: Iterable<string>) => [...names].sort();

describe('the formula sheet', () => {
  it('has every formula of the core once, under a question', () => {
    expect(sorted(onSheet.map(({ id }) => id))).toEqual(sorted(all.map(({ id }) => id)));
    const unasked = sheet.find(({ id }) => id === 'what-else')?.questions.flatMap(({ formulas }) => formulas) ?? [];
    expect(
      unasked.map(({ id }) => id),
      'formulas that need a question and a name in site/sheet/questions.ts',
    ).toEqual([]);
  });

  it('calls no two formulas alike, and none by its file', () => {
    const names = onSheet.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)]);
    for (const { id, name } of onSheet) expect(formulaName(id)).toBe(name);
    expect(formulaName('iso-for-close-up-f-number')).toBe('ISO for close-up f-number');
  });

  it('asks nothing twice and asks in questions', () => {
    const asked = [...sheet.map(({ asks }) => asks), ...questions.map(({ asks }) => asks)];
    expect(asked).toEqual([...new Set(asked)]);
    for (const words of asked) expect(words).toMatch(/^[A-Z].*\?$/);
  });

  it('names lessons of the course, and of those that are written none that shows none of the formulas', () => {
    const slugs = course.map(({ slug }): string => slug);
    const written = lessonSlugs();
    for (const { taughtIn, asks, formulas } of questions) {
      if (taughtIn === undefined) continue;
      expect(slugs, asks).toContain(taughtIn);
      if (!written.includes(taughtIn)) continue;
      const [prose, bench] = ['lesson.mdx', 'bench.svelte.ts'].map((file) =>
        readFileSync(join(root, 'lessons', taughtIn, file), 'utf8'),
      );
      const isShown = formulas.some(({ id }) => prose!.includes(`of="${id}"`) || bench!.includes(`/${id}.formula.ts`));
      expect(isShown, `${taughtIn} shows none of: ${asks}`).toBe(true);
    }
  });

  it('puts formulas on the card that it has', () => {
    for (const id of onCard) expect(all.map((one) => one.id)).toContain(id);
    expect(onCard.size).toBeLessThan(50);
  });

  it('names sources without the paths of files', () => {
    expect(sourceInWords('OpenStax; derived in core/rig/README.md#close-up-lenses')).toBe(
      'OpenStax; derived in the workbook’s own notes',
    );
    for (const { id, formula } of onSheet) expect(sourceInWords(formula.source), id).not.toMatch(/core\/|\.md|\.ts/);
  });
});
