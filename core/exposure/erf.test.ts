import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { erf } from './erf.ts';

describe('erf', () => {
  it('is odd, 0 at 0', () => {
    expect(erf(0)).toBe(0);
    for (const x of [1e-9, 0.3, 2, 5, 10]) expect(erf(-x)).toBe(-erf(x));
  });

  it('has the slope 2/√π at 0', () => {
    expect(erf(1e-8) / 1e-8).toEqual(
      closeTo(2 / Math.sqrt(Math.PI), { relative: 1e-15, because: 'they part by x²/3' }),
    );
  });

  it('is the integral of exp(−t²) by Simpson’s rule', () => {
    const steps = 2000;
    const x = 1.7;
    let sum = 0;
    for (let k = 0; k <= steps; k++) {
      const weight = k === 0 || k === steps ? 1 : k % 2 === 1 ? 4 : 2;
      sum += weight * Math.exp(-(((x * k) / steps) ** 2));
    }
    const integral = ((2 / Math.sqrt(Math.PI)) * sum * x) / steps / 3;
    expect(erf(x)).toEqual(closeTo(integral, { relative: 1e-13, because: 'Simpson’s rule with 2000 steps' }));
  });

  it('passes from its series to its continued fraction without a jump', () => {
    const slope = (2 / Math.sqrt(Math.PI)) * Math.exp(-4);
    expect(erf(2 + 1e-9) - erf(2)).toEqual(closeTo(slope * 1e-9, { absolute: 3e-16, because: 'two roundings of 1' }));
  });

  it('reaches 1 without a jump', () => {
    expect(erf(5.9999)).toEqual(closeTo(1, { absolute: 2e-16, because: 'erfc(6) is 2e-17' }));
    expect(erf(6.0001)).toBe(1);
    expect(erf(Infinity)).toBe(1);
  });

  it('never falls as x grows but for rounding, nor leaves −1 to 1', () => {
    let last = -1;
    for (let x = -6.5; x < 6.5; x += 0.01) {
      expect(erf(x)).toBeGreaterThanOrEqual(last - 2e-16);
      expect(Math.abs(erf(x))).toBeLessThanOrEqual(1);
      last = erf(x);
    }
  });
});
