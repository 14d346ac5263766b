import { expect, test } from 'vitest';
import { subjectOf } from '#core/picture/subjects/subjects.ts';
import { subjects } from './subjects.ts';

test.each(Object.entries(subjects))('%s is as large here as the subject that is rendered', (slug, subject) => {
  const { width, depth } = subjectOf(slug);
  expect(subject).toMatchObject({ width, top: depth });
  expect(subject['subject-depth']).toBeLessThanOrEqual(depth);
});
