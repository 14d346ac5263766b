import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { straightLine } from './straight-line.ts';
import { parallelLines } from './parallel-lines.ts';

const at = (x: number, y: number, weight = 1) => ({ x, y, weight });
const rounding = { absolute: 1e-9, because: 'rounding' };

describe('straightLine', () => {
  it('lies as far above two of four readings as below the others', () => {
    const line = straightLine([at(0, 0), at(0, 2), at(2, 1), at(2, 3)]);
    expect(line).toMatchObject({ intercept: 1, slope: 0.5, residuals: [-1, 1, -1, 1], degreesOfFreedom: 2 });
    expect(line?.scatter).toEqual(closeTo(Math.SQRT2, rounding));
    expect(line?.variances).toEqual({ intercept: 0.5, both: -0.25, slope: 0.25 });
  });

  it('has residuals that balance, whatever the readings', () => {
    const reading = fc.record({
      x: fc.double({ min: -10, max: 10, noNaN: true }),
      y: fc.double({ min: -10, max: 10, noNaN: true }),
      weight: fc.double({ min: 0.1, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 3, maxLength: 12 }), (readings) => {
        const line = straightLine(readings);
        fc.pre(line !== null && line.variances.slope < 100);
        const balance = (arm: (x: number) => number) =>
          readings.reduce((sum, { x, weight }, i) => sum + weight * arm(x) * (line.residuals[i] as number), 0);
        expect(balance(() => 1)).toEqual(closeTo(0, rounding));
        expect(balance((x) => x)).toEqual(closeTo(0, { absolute: 1e-7, because: 'rounding, times a hundred' }));
      }),
    );
  });

  it('takes a reading of weight two as two readings of weight one', () => {
    const heavy = straightLine([at(0, 0, 2), at(1, 3), at(2, 2)]);
    const twice = straightLine([at(0, 0), at(0, 0), at(1, 3), at(2, 2)]);
    expect(heavy?.slope).toEqual(closeTo(twice?.slope as number, rounding));
    expect(heavy?.intercept).toEqual(closeTo(twice?.intercept as number, rounding));
  });

  it('goes through two readings, says nothing of the scatter, and through one where its start is known', () => {
    expect(straightLine([at(1, 1), at(3, 5)])).toMatchObject({ intercept: -1, slope: 2, scatter: null });
    expect(straightLine([at(4, 5)], { intercept: 3 })).toMatchObject({ intercept: 3, slope: 0.5, scatter: null });
  });

  it('is open without readings, with one, with all at one place, and at the start of a line whose start is known', () => {
    expect(straightLine([])).toBeNull();
    expect(straightLine([at(4, 5)])).toBeNull();
    expect(straightLine([at(12, 1), at(12, 2), at(12 + 1e-10, 3)])).toBeNull();
    expect(straightLine([at(0, 1), at(0, 2)], { intercept: 0 })).toBeNull();
  });
});

it.each([at(NaN, 1), at(1, Infinity), at(1, 1, 0), at(1, 1, NaN)])(
  'refuses the reading $y at $x of weight $weight',
  (reading) => {
    const readings = [reading, at(2, 1), at(3, 2)];
    expect(() => straightLine(readings)).toThrow(/a reading is/);
    expect(() => parallelLines(readings.map((one) => ({ ...one, group: 'a' })))).toThrow(/a reading is/);
  },
);
