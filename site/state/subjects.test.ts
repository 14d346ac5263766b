import { expect, test } from 'vitest';
import { subjects as drawn } from '#core/picture/subjects/subjects.ts';
import { asking, type Asking } from './asking.ts';
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

test.each(Object.entries<Asking>(asking))('%s asks for what a plan can give', (_, asked) => {
  expect(asked['frame-fill']).toBeGreaterThan(0);
  expect(asked['frame-fill']).toBeLessThanOrEqual(1);
  for (const length of [asked['subject-width'], asked['subject-depth'], asked['subject-speed'], asked.room]) {
    expect(length).toBeGreaterThan(0);
  }
});
