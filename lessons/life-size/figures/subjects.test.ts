import { expect, it } from 'vitest';
import { outlines } from './outlines.ts';
import { subjectOfWidth, subjects } from './subjects.ts';

it('every subject is found by its own width', () => {
  for (const [slug, subject] of Object.entries(subjects)) expect(subjectOfWidth(subject['subject-width'])).toBe(slug);
});

it('any width is drawn as the thing that comes nearest by ratio', () => {
  expect(subjectOfWidth(2000)).toBe('dinner-plate');
  expect(subjectOfWidth(0.05)).toBe('salt-grain');
  expect(subjectOfWidth(16)).toBe('drawing-pin');
  expect(subjectOfWidth(19)).toBe('postage-stamp');
});

it('every subject has an outline', () => {
  expect(Object.keys(outlines)).toEqual(Object.keys(subjects));
});
