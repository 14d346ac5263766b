import besselj0 from '@stdlib/math-base-special-besselj0';
import besselj1 from '@stdlib/math-base-special-besselj1';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { besselJ0, besselJ1 } from './bessel.ts';

const accuracy = { absolute: 1e-15, because: 'the accuracy that the docstring states' } as const;
const upTo1000 = Array.from({ length: 4001 }, (_, n) => n / 4);

describe('besselJ0 and besselJ1', () => {
  it('are 0.2239 and 0.5767 at 2', () => {
    expect(besselJ0(2)).toEqual(closeTo(0.22389077914123567, accuracy));
    expect(besselJ1(2)).toEqual(closeTo(0.5767248077568734, accuracy));
  });

  it('agree with an independent library from 0 to 1000', () => {
    for (const x of upTo1000) {
      expect(besselJ0(x), `J0(${x})`).toEqual(closeTo(besselj0(x), accuracy));
      expect(besselJ1(x), `J1(${x})`).toEqual(closeTo(besselj1(x), accuracy));
    }
  });

  it('agree with the trapezium rule on a whole turn of Bessel’s integral, past the joint of their two methods', () => {
    const turn = Array.from({ length: 256 }, (_, k) => (2 * Math.PI * k) / 256);
    const integral = (order: number, x: number) =>
      turn.reduce((sum, t) => sum + Math.cos(order * t - x * Math.sin(t)), 0) / turn.length;
    const rounding = { absolute: 4e-15, because: 'rounding of x sin t, x up to 60, in the rule itself' };
    for (let x = 0; x <= 60; x += 0.37) {
      expect(besselJ0(x)).toEqual(closeTo(integral(0, x), rounding));
      expect(besselJ1(x)).toEqual(closeTo(integral(1, x), rounding));
    }
  });

  it('keep their relative precision near 0, where J1 tends to x/2', () => {
    expect(besselJ1(1e-200)).toEqual(closeTo(5e-201, { relative: 1e-15, because: 'rounding of a sum of 16 terms' }));
    expect(besselJ0(0)).toBe(1);
    expect(besselJ1(0)).toBe(0);
  });

  it('are even and odd, never beyond ±1, and refuse what is no number', () => {
    fc.assert(
      fc.property(fc.double({ noDefaultInfinity: true, noNaN: true }), (x) => {
        expect(besselJ0(-x)).toBe(besselJ0(x));
        expect(besselJ1(-x) + besselJ1(x)).toBe(0);
        expect(Math.abs(besselJ0(x))).toBeLessThanOrEqual(1);
        expect(Math.abs(besselJ1(x))).toBeLessThanOrEqual(1);
      }),
    );
    for (const x of [NaN, Infinity, -Infinity]) {
      expect(() => besselJ0(x)).toThrow(RangeError);
      expect(() => besselJ1(x)).toThrow(/accepted: a finite number/);
    }
  });
});
