import { expect, it } from 'vitest';
import { largestDifference, ours, plain } from './wave-speed.ts';

it('compares two ways to the same numbers', () => {
  const pupil = { defocusAberration: 1, sphericalAberration: 0.5 };
  const [fast, slow] = [ours(pupil), plain(pupil, { spread: 1500, across: 150, up: 60 })];
  expect(largestDifference(fast.spread(), slow.spread())).toBeLessThan(1e-5);
  expect(largestDifference(fast.transfer(), slow.transfer())).toBeLessThan(1e-3);
  expect(largestDifference(fast.spread(), ours({ ...pupil, defocusAberration: 1.1 }).spread())).toBeGreaterThan(1e-3);
});
