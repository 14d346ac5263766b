import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWithin, marginAt, type Tolerance } from './tolerance.ts';

const because = 'three figures read off a ring';
const share: Tolerance = { relative: 0.02, because };
const fixed: Tolerance = { absolute: 0.1, because };

describe('marginAt', () => {
  it('grows with the value where it is a share, whatever the sign', () => {
    expect(marginAt(50, share)).toBe(1);
    expect(marginAt(-50, share)).toBe(1);
  });

  it('stays where it is fixed', () => {
    expect([0, 7].map((value) => marginAt(value, fixed))).toEqual([0.1, 0.1]);
  });
});

describe('isWithin', () => {
  it('takes the edge in and leaves out what lies a thousandth beyond it', () => {
    const numbers = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(numbers, fc.constantFrom(share, fixed), fc.constantFrom(-1, 1), (target, tolerance, side) => {
        const margin = side * marginAt(target, tolerance);
        expect(isWithin(target + margin, target, tolerance)).toBe(true);
        // With a million beside it a fixed tenth is so small that rounding could reach a thousandth of it.
        if (Math.abs(margin) > 1e-6 * target) expect(isWithin(target + 1.001 * margin, target, tolerance)).toBe(false);
      }),
      { seed: 1 },
    );
  });

  it('takes nothing but the number itself where the margin is 0', () => {
    expect(isWithin(12, 12, { absolute: 0, because })).toBe(true);
    expect(isWithin(13, 12, { absolute: 0, because })).toBe(false);
  });
});
