import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '#tests/support/run.ts';
import { coreOfAllLessons, importsIn, ownCopy } from './own-copies.ts';

const folder = join(root, 'lessons/trial');

test('what runs is found, types are not', () => {
  const text = `import type { A } from './types.ts';
import { b } from '#core/gaussian/magnification.formula.ts';
import './bare.ts';
export { c } from '../other/c.ts';
const later = () => import('./later.ts');
`;
  expect(importsIn(text, folder).map((file) => relative(root, file))).toEqual([
    'core/gaussian/magnification.formula.ts',
    'lessons/trial/bare.ts',
    'lessons/other/c.ts',
  ]);
});

test('what is found of the site and the lessons is there', () => {
  for (const file of globSync('{site,lessons}/**/*.svelte', { cwd: root })) {
    for (const found of importsIn(readFileSync(join(root, file), 'utf8'), dirname(join(root, file))))
      expect(existsSync(found.replace(/\?.*/, '')), `${file}: ${found}`).toBe(true);
  }
});

test('a lesson’s figure has its own copies of formulas, and hands them on', () => {
  const shared = coreOfAllLessons();
  const of = (importer: string, file: string) => ownCopy(join(root, importer), join(root, file), shared);
  const copy = join(root, 'core/stack/stack-time.formula.ts?in=stacking');
  expect(of('lessons/stacking/bench.svelte.ts', 'core/stack/stack-time.formula.ts')).toBe(copy);
  expect(of('lessons/stacking/problems.ts?in=stacking', 'core/stack/stack-time.formula.ts')).toBe(copy);
  expect(of('lessons/stacking/figures/Islands.astro?astro', 'lessons/stacking/problems.ts')).toMatch(
    /problems\.ts\?in=stacking$/,
  );
  // Twenty copies of what makes a kind of problem would come to rest in the one file that all problems share.
  expect(of('lessons/stacking/problems.ts?in=stacking', 'core/practice/family.ts')).toBeUndefined();
});

test('what all lessons share, what is no code of the core and what other pages take of a lesson is shared', () => {
  const shared = coreOfAllLessons();
  const of = (importer: string, file: string) => ownCopy(join(root, importer), join(root, file), shared);
  expect(of('lessons/stacking/bench.svelte.ts', 'core/quantity/errors.ts')).toBeUndefined();
  expect(of('lessons/stacking/bench.svelte.ts', 'site/state/bench.svelte.ts')).toBeUndefined();
  expect(of('lessons/stacking/problems.ts', 'core/stack/stack-time.formula.ts')).toBeUndefined();
  expect(of('site/check/engine.ts', 'lessons/stacking/problems.ts')).toBeUndefined();
});
