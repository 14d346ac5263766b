import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { framesForChance } from './frames-for-chance.ts';

describe('framesForChance', () => {
  it('is 29 for one keeper in ten at 95 per cent', () => {
    expect(framesForChance(0.1, 0.95)).toBe(29);
  });

  it('is exact where a power hits the chance', () => {
    expect(framesForChance(0.5, 0.75)).toBe(2);
    expect(framesForChance(0.5, 0.9375)).toBe(4);
    expect(framesForChance(0.1, 0.19)).toBe(2);
  });

  it('is 1 where the share is the chance or more', () => {
    expect(framesForChance(0.95, 0.95)).toBe(1);
    expect(framesForChance(1, 1)).toBe(1);
    expect(framesForChance(0.99, 0.5)).toBe(1);
  });

  it('is endless for certainty', () => {
    expect(framesForChance(0.5, 1)).toBe(Infinity);
  });

  it('refuses what is no share', () => {
    expect(() => framesForChance(0, 0.95)).toThrow(/keeper-share is 0/);
    expect(() => framesForChance(0.5, 1.2)).toThrow(OutOfRange);
    expect(() => framesForChance(NaN, 0.95)).toThrow(OutOfRange);
  });
});
