import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { betweenSettings } from './between-settings.ts';

const rounding = { relative: 1e-12, because: 'rounding' };
const only = (at: readonly number[], values: readonly number[]) => {
  const between = betweenSettings(
    at,
    values.map((value) => [value]),
  );
  return (place: number) => between(place)[0] as number;
};

describe('betweenSettings', () => {
  it('gives settings back to the last digit, first and last included', () => {
    const value = only([0, 0.3, 1], [1 / 3, 2 / 7, 5]);
    expect([0, 0.3, 1].map(value)).toEqual([1 / 3, 2 / 7, 5]);
  });

  it('is the straight line between two settings, and what it is at the only one', () => {
    expect(only([0, 2], [1, 5])(0.5)).toBe(2);
    expect(only([0], [7])(0)).toBe(7);
  });

  it('gives a parabola back that does not turn between its settings', () => {
    const parabola = (x: number) => 3 + 2 * x + 1.5 * x ** 2;
    const at = [0, 0.2, 0.5, 1.1];
    const value = only(at, at.map(parabola));
    for (const x of [0.05, 0.1, 0.3, 0.49, 0.7, 1]) expect(value(x)).toEqual(closeTo(parabola(x), rounding));
  });

  it('is level where values turn round, and nowhere beyond what is known on either side', () => {
    const value = only([0, 0.4, 1], [0, 10, 8]);
    for (let x = 0; x <= 1; x += 0.01) expect(value(x)).toBeLessThanOrEqual(10);
    const slope = (value(0.4 + 1e-6) - value(0.4 - 1e-6)) / 2e-6;
    expect(slope).toEqual(closeTo(0, { absolute: 1e-3, because: 'over two millionths of a curve that bends' }));
  });

  it('passes no neighbour, whatever is known', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 100, noNaN: true }), { minLength: 2, maxLength: 6 }),
        fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (values, gaps, share) => {
          const at = values.map((_, index) => gaps.slice(0, index).reduce((sum, gap) => sum + gap, 0));
          const place = share * (at.at(-1) as number);
          const right = Math.max(
            1,
            at.findIndex((here) => place <= here),
          );
          const [one, other] = [values[right - 1] as number, values[right] as number];
          const slack = 1e-13 * Math.max(...values);
          const value = only(at, values)(place);
          expect(value).toBeGreaterThanOrEqual(Math.min(one, other) - slack);
          expect(value).toBeLessThanOrEqual(Math.max(one, other) + slack);
        },
      ),
      { seed: 91, numRuns: 2000 },
    );
  });

  it('leaves what stands still where it is, and two spacings that share one length sharing it', () => {
    const between = betweenSettings(
      [0, 0.1, 0.6, 1],
      [3, 9, 8, 1].map((one) => [one, 12 - one, 4]),
    );
    for (let x = 0; x <= 1; x += 0.03) {
      const [one, other, still] = between(x) as [number, number, number];
      expect(one + other).toEqual(closeTo(12, rounding));
      expect(still).toBe(4);
    }
  });

  it('bends without a kink at a setting', () => {
    const value = only([0, 0.5, 1], [5, 18, 37]);
    const side = (step: number) => (value(0.5 + step) - value(0.5)) / step;
    expect(side(1e-6)).toEqual(closeTo(side(-1e-6), { relative: 1e-4, because: 'slopes over a millionth' }));
  });
});
