import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { envelope, trustAt } from './envelope.ts';
import { longRunVariance } from './long-run-variance.ts';
import { withoutSlowPart } from './slow-part.ts';
import { solveSymmetric } from './solve-symmetric.ts';

const shape = { cycles: 40, drift: 0 };
const wave = (strength: (at: number) => number) =>
  Float64Array.from({ length: 801 }, (_, at) => strength(at) * Math.cos((2 * Math.PI * (at - 400)) / 20));

describe('solveSymmetric', () => {
  it('solves what it is given, whatever that is', () => {
    const numbers = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(numbers, (values) => {
        // A product of a matrix with itself, and a little more: positive definite.
        const rows = [values.slice(0, 4), values.slice(4, 8), values.slice(8, 12)];
        const matrix = rows.map((one, i) =>
          rows.map((other, j) => one.reduce((sum, value, k) => sum + value * other[k]!, i === j ? 0.1 : 0)),
        );
        const solved = solveSymmetric(matrix, [1, -2, 3])!;
        matrix.forEach((row, i) => {
          const product = row.reduce((sum, value, k) => sum + value * solved[k]!, 0);
          expect(product).toEqual(closeTo([1, -2, 3][i]!, { absolute: 1e-9, because: 'rounding' }));
        });
      }),
    );
  });

  it('leaves open what has no solution', () => {
    expect(
      solveSymmetric(
        [
          [1, 1],
          [1, 1],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
  });
});

describe('withoutSlowPart', () => {
  it('takes the mean over one mark away, at the ends that of the nearest whole one', () => {
    // A step in the middle, marks ten samples wide: by hand, a mean over ten that takes in n of the upper ones is n/10.
    const step = Float64Array.from({ length: 101 }, (_, at) => Number(at >= 50));
    const level = withoutSlowPart(step, { cycles: 10, drift: 0 });
    const rounding = { absolute: 1e-12, because: 'rounding' };
    expect([0, 5, 44, 56, 100].map((at) => Math.abs(level[at]!) < 1e-12)).toEqual([true, true, true, true, true]);
    expect(level[49]).toEqual(closeTo(-0.45, rounding));
    expect(level[50]).toEqual(closeTo(1 - 0.55, rounding));
    expect(level[53]).toEqual(closeTo(1 - 0.85, rounding));
    const slope = withoutSlowPart(
      step.map((_, at) => at),
      { cycles: 10, drift: 0 },
    );
    expect(slope[0]).toEqual(closeTo(0 - 4.5, rounding));
    expect(slope[3]).toEqual(closeTo(3 - 4.5, rounding));
    expect(slope[60]).toEqual(closeTo(0, { absolute: 1e-9, because: 'rounding' }));
    expect(slope[100]).toEqual(closeTo(100 - 95.5, { absolute: 1e-9, because: 'rounding' }));
  });

  it('leaves a comb as it is and takes a shadow away', () => {
    const comb = wave(() => 1);
    const level = withoutSlowPart(
      comb.map((value, at) => value + 0.01 * at),
      shape,
    );
    for (let at = 40; at < 760; at++)
      expect(level[at]).toEqual(closeTo(comb[at]!, { absolute: 1e-9, because: 'rounding' }));
  });
});

describe('envelope', () => {
  it('is the amplitude of a wave that grows, about four marks wide', () => {
    const strength = envelope(
      wave((at) => 1 + at / 400),
      shape,
      1,
    );
    for (const at of [200, 400, 600])
      expect(strength[at]).toEqual(closeTo(1 + at / 400, { relative: 0.01, because: 'a mean over four marks' }));
  });

  it('trusts the sharpest wholly, and nothing that is so soft that it may be reversed', () => {
    expect([...trustAt(Float64Array.of(1, 0.5, 0.25, 0))]).toEqual([
      1,
      closeTo(0.5, { absolute: 1e-12, because: 'rounding' }),
      0,
      0,
    ]);
  });
});

describe('longRunVariance', () => {
  const ones = new Float64Array(100).fill(1);
  const tilt = ones.map((_, at) => at - 49.5);
  it('is that of a mean and a slope for readings that do not hang together', () => {
    const readings = ones.map((_, at) => (at % 2 ? 1 : -1) * (1 + (at % 3)));
    const squares = readings.reduce((sum, one) => sum + one * one, 0) / 98;
    const [mean] = longRunVariance([ones, tilt], readings, 0, 2);
    expect(mean).toEqual(closeTo(squares / 100, { relative: 1e-9, because: 'the sum of squares over n (n − 2)' }));
  });

  it('is larger for readings that come in runs, and as large as their number of runs says', () => {
    const runs = ones.map((_, at) => (Math.floor(at / 10) % 2 ? 1 : -1));
    const [alone] = longRunVariance([ones, tilt], runs, 0, 2);
    const [together] = longRunVariance([ones, tilt], runs, 6, 2);
    expect(together).toBeGreaterThan(3 * alone);
  });

  it('counts a lag of l by 1 − l/(L + 1), on both sides, and by n/(n − unknowns) in all', () => {
    // By hand, for the mean of four readings 1, 2, 0, −1 and beside it the last one alone: H = (4 1; 1 1), H⁻¹ = (1 −1; −1 4)/3.
    const [one, other] = [Float64Array.of(1, 1, 1, 1), Float64Array.of(0, 0, 0, 1)];
    const readings = Float64Array.of(1, 2, 0, -1);
    // S = Σ squares + 2·½·Σ neighbours' products: u (1 2 0 −1): 6 + 2; v (0 0 0 −1): 1 + 0; uv: 1 + ½(0 + 0).
    const [uu, uv, vv] = [8, 1, 1];
    const factor = 4 / (4 - 2) / 9;
    const rounding = { relative: 1e-12, because: 'rounding' };
    const [first, both, second] = longRunVariance([one, other], readings, 1, 2);
    expect(first).toEqual(closeTo(factor * (uu - 2 * uv + vv), rounding));
    expect(both).toEqual(closeTo(factor * (-uu + 5 * uv - 4 * vv), rounding));
    expect(second).toEqual(closeTo(factor * (uu - 8 * uv + 16 * vv), rounding));
  });

  it('is the same for readings taken in the other order, whatever hangs together', () => {
    const readings = ones.map((_, at) => Math.sin(at) + (at % 7 === 0 ? 1 : 0));
    const there = longRunVariance([ones, tilt], readings, 4, 2);
    const back = longRunVariance([ones, tilt.map((one) => -one)], readings.toReversed(), 4, 2);
    expect(back[0]).toEqual(closeTo(there[0], { relative: 1e-9, because: 'rounding' }));
    expect(back[1]).toEqual(closeTo(there[1], { relative: 1e-9, because: 'rounding' }));
    expect(back[2]).toEqual(closeTo(there[2], { relative: 1e-9, because: 'rounding' }));
  });

  it('takes any number of samples to hang together, and as many unknowns as readings', () => {
    for (const together of [-3, 0.2, 1e6]) {
      for (const value of longRunVariance([ones, tilt], ones.map(Math.sin), together, 100))
        expect(Number.isFinite(value)).toBe(true);
    }
    expect(longRunVariance([ones, tilt], tilt, -3, 2)).toEqual(longRunVariance([ones, tilt], tilt, 0, 2));
  });
});
