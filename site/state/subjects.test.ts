import { expect, test } from 'vitest';
import { subjects as drawn } from '#core/picture/subjects/subjects.ts';
import { subjects, type Subject } from './subjects.ts';

test('pages know every subject that is rendered, with its size', () => {
  expect(Object.keys(subjects).sort()).toEqual(drawn.map(({ slug }) => slug).sort());
  for (const { slug, width, depth } of drawn) {
    expect(subjects[slug as keyof typeof subjects]).toMatchObject({ width, top: depth });
  }
});

test.each(Object.entries<Subject>(subjects))(
  '%s is focused, stacked and looked past within its own depth',
  (_, subject) => {
    const { top, focusHeight, detail } = subject;
    for (const height of [focusHeight, detail?.focusHeight, subject['subject-depth'], subject['edge-height']]) {
      expect(height ?? top).toBeGreaterThan(0);
      expect(height ?? top).toBeLessThanOrEqual(top);
    }
  },
);
