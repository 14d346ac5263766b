import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { keeperScatter } from './keeper-scatter.ts';

describe('the scatter of a count of keepers', () => {
  it('is what the binomial distribution says', () => {
    const computed = keeperScatter({ frames: 40, keeperShare: 0.1 });
    expect(computed).toEqual(closeTo(1.8973666, { relative: 1e-7, because: '√3.6 to eight figures' }));
  });

  it('is twice as wide for four times the frames, and half as wide as a share of them', () => {
    const scatter = (frames: number) => keeperScatter({ frames, keeperShare: 0.3 });
    expect(scatter(160) / scatter(40)).toBeCloseTo(2, 12);
  });

  it('is none where all are in focus, or none', () => {
    expect(keeperScatter({ frames: 40, keeperShare: 1 })).toBe(0);
    expect(keeperScatter({ frames: 40, keeperShare: 0 })).toBe(0);
  });

  it('is met by counting', () => {
    const chance = chanceFrom(7);
    const counts = Array.from({ length: 4000 }, () => Array.from({ length: 40 }, chance).filter((one) => one < 0.3));
    const square = counts.reduce((sum, { length }) => sum + (length - 12) ** 2, 0) / counts.length;
    // Of four thousand counts the spread is found within 1.1 %, two times out of three.
    expect(Math.abs(Math.sqrt(square) / keeperScatter({ frames: 40, keeperShare: 0.3 }) - 1)).toBeLessThan(0.04);
  });

  it.each([-0.1, 1.1, NaN])('refuses a share of %d', (keeperShare) => {
    expect(() => keeperScatter({ frames: 40, keeperShare })).toThrow(OutOfRange);
  });
});

it.each([NaN, -1, Infinity])('refuses %s frames by name', (frames) => {
  expect(() => keeperScatter({ frames, keeperShare: 0.1 })).toThrow(/frame-count is/);
});
