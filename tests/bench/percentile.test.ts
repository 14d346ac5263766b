import { expect, it } from 'vitest';
import { percentile } from './percentile.ts';

it('is the smallest value that the share of values do not exceed', () => {
  const hundred = Array.from({ length: 100 }, (_, index) => 100 - index);
  expect(percentile(hundred, 0.95)).toBe(95);
  expect(percentile([7], 0.95)).toBe(7);
});

it('refuses an empty list, for then nothing was measured', () => {
  expect(() => percentile([], 0.95)).toThrow(/could not be dragged/);
});
