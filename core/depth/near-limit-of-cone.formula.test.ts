import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { nearLimitOfCone } from './near-limit-of-cone.formula.ts';

/** Life size at an effective f/20, half the close-up depth 0.4 mm. */
const seen = { circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: 0 };
const from = (inverseEntrancePupilDistance: number) => nearLimitOfCone({ ...seen, inverseEntrancePupilDistance });

describe('nearLimitOfCone', () => {
  it('is 0.4/1.004 mm for a pupil 100 mm in front, 0.4/0.996 mm for one as far behind', () => {
    const rounding = { relative: 1e-14, because: 'a few roundings' };
    expect(from(0.01)).toEqual(closeTo(0.4 / 1.004, rounding));
    expect(from(-0.01)).toEqual(closeTo(0.4 / 0.996, rounding));
  });

  it('has a reciprocal that differs from that of the telecentric one by 1/u', () => {
    for (const inverse of [-2, -0.1, 0.3, 5]) {
      expect(1 / from(inverse)).toEqual(closeTo(2.5 + inverse, { relative: 1e-14, because: 'a few roundings' }));
    }
  });

  it('passes from one side to the other through the close-up form, without a jump', () => {
    expect(from(0)).toBe(0.4);
    expect(from(1e-9) - from(-1e-9)).toEqual(
      closeTo(-2e-9 * 0.4 ** 2, { absolute: 1e-15, because: 'rounding of numbers near 0.4' }),
    );
  });

  it('is infinite where the pupil behind the subject is no wider than the circle there', () => {
    expect(from(-2.5)).toBe(Infinity);
    expect(from(-3)).toBe(Infinity);
    expect(from(-2.4999)).toBeLessThan(Infinity);
  });

  it('refuses an f-number of zero, and a pupil that is nowhere, by name', () => {
    expect(() => nearLimitOfCone({ ...seen, effectiveFNumber: 0 })).toThrow(/effective-f-number is 0/);
    expect(() => from(NaN)).toThrow(OutOfRange);
    expect(() => from(Infinity)).toThrow(/inverse-entrance-pupil-distance is Infinity/);
  });
});
