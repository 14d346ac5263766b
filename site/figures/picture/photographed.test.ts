import { expect, test } from 'vitest';
import { subjects } from '#core/picture/subjects/subjects.ts';
import { photographed } from './photographed.ts';

test('pages know every subject that is rendered, with its size', () => {
  expect(Object.keys(photographed).sort()).toEqual(subjects.map(({ slug }) => slug).sort());
  for (const { slug, width, depth } of subjects) {
    expect(photographed[slug as keyof typeof photographed]).toMatchObject({ width, top: depth });
  }
});
