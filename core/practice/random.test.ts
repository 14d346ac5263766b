import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawFrom } from './random.ts';

const seeds = fc.integer({ min: 0, max: 0xffffffff });

describe('drawFrom', () => {
  it('gives the same picks for the same seed', () => {
    const picks = (seed: number) => {
      const draw = drawFrom(seed);
      return [draw.pick(['a', 'b', 'c']), draw.between(0, 1, 0.001), draw.logStep(0.1, 10, 6)];
    };
    fc.assert(
      fc.property(seeds, (seed) => void expect(picks(seed)).toEqual(picks(seed))),
      { seed: 1 },
    );
  });

  it('picks every thing of a list', () => {
    const draw = drawFrom(7);
    expect(new Set(Array.from({ length: 100 }, () => draw.pick([1, 2, 3, 4])))).toEqual(new Set([1, 2, 3, 4]));
  });

  it('gives decimals, from the first step to the last', () => {
    const draw = drawFrom(7);
    const drawn = new Set(Array.from({ length: 200 }, () => draw.between(0.1, 0.7, 0.1)));
    expect([...drawn].sort()).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
  });

  it('does not go beyond the end where the steps miss it', () => {
    const draw = drawFrom(7);
    expect(new Set(Array.from({ length: 100 }, () => draw.between(1, 2, 0.4)))).toEqual(new Set([1, 1.4, 1.8]));
  });

  it('keeps a logarithmic pick in its range and to its figures', () => {
    const ranges = fc.tuple(
      fc.integer({ min: 1, max: 99 }),
      fc.integer({ min: 1, max: 1000 }),
      fc.integer({ min: 1, max: 4 }),
    );
    fc.assert(
      fc.property(seeds, ranges, (seed, [least, times, figures]) => {
        const value = drawFrom(seed).logStep(least, least * times, figures);
        expect(value).toBeGreaterThanOrEqual(least);
        expect(value).toBeLessThanOrEqual(least * times);
        if (value !== least && value !== least * times) expect(value).toBe(Number(value.toPrecision(figures)));
      }),
      { seed: 1 },
    );
  });

  it('picks as often below the geometric middle as above', () => {
    const draw = drawFrom(3);
    const below = Array.from({ length: 4000 }, () => draw.logStep(0.01, 100, 6)).filter((value) => value < 1).length;
    expect(Math.abs(below - 2000)).toBeLessThan(160);
  });
});
