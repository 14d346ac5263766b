import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { finderLoss } from './finder-loss.formula.ts';

const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('finderLoss', () => {
  it('is 8 stops from f/2 to a cone of f/32', () => {
    expect(finderLoss({ effectiveFNumber: 32, maxAperture: 2 })).toEqual(closeTo(8, rounding));
  });

  it('grows by two stops when the effective f-number doubles', () => {
    const once = finderLoss({ effectiveFNumber: 9, maxAperture: 1.8 });
    expect(finderLoss({ effectiveFNumber: 18, maxAperture: 1.8 })).toEqual(closeTo(once + 2, rounding));
  });

  it('is nothing wide open far away', () => {
    expect(finderLoss({ effectiveFNumber: 2.8, maxAperture: 2.8 })).toBe(0);
  });

  it('refuses an f-number of 0 by name', () => {
    expect(() => finderLoss({ effectiveFNumber: 8, maxAperture: 0 })).toThrow(OutOfRange);
    expect(() => finderLoss({ effectiveFNumber: 8, maxAperture: 0 })).toThrow(/max-aperture is 0/);
  });
});
