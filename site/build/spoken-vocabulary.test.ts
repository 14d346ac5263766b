import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isQuantityId, quantityIds } from '#core/quantity/vocabulary.ts';
import { spokenInLessons, spokenVocabulary } from './spoken-vocabulary.ts';

const vocabulary = readFileSync('core/quantity/vocabulary.ts', 'utf8');
const rowsOf = (code: string) => [...code.matchAll(/^ {2}'?([a-z-]+)'?: row\(/gm)].map(([, id]) => id!);

test('the whole vocabulary is found as rows', () => {
  expect(rowsOf(vocabulary)).toEqual(quantityIds);
});

test('rows that are spoken of stay as they are, the others go', () => {
  expect(rowsOf(spokenVocabulary(vocabulary, "bench.set('focal-length', 50); given.magnification"))).toEqual([
    'focal-length',
    'magnification',
  ]);
});

test('whatever the lessons name is kept', () => {
  const spoken = spokenInLessons();
  const kept = new Set(rowsOf(spokenVocabulary(vocabulary, spoken)));
  const named = [...spoken.matchAll(/['"`]([a-z]+(?:-[a-z]+)*)['"`]/g)].map(([, id]) => id!).filter(isQuantityId);
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((id) => !kept.has(id))).toEqual([]);
});
