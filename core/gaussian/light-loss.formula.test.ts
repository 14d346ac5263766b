import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lightLoss } from './light-loss.formula.ts';

describe('lightLoss', () => {
  it('is two stops where f/8 works like f/16', () => {
    expect(lightLoss({ effectiveFNumber: 16, fNumber: 8 })).toBe(2);
  });

  it('does not depend on the f-number that is set, only on the ratio', () => {
    expect(lightLoss({ effectiveFNumber: 33.6, fNumber: 11.2 })).toEqual(
      closeTo(lightLoss({ effectiveFNumber: 8.4, fNumber: 2.8 }), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is nothing where the cone is as marked', () => {
    expect(lightLoss({ effectiveFNumber: 5.6, fNumber: 5.6 })).toBe(0);
  });

  it('is negative, a gain, where the cone is wider than marked', () => {
    expect(lightLoss({ effectiveFNumber: 4, fNumber: 8 })).toBe(-2);
  });

  it('refuses an f-number of zero by name', () => {
    expect(() => lightLoss({ effectiveFNumber: 16, fNumber: 0 })).toThrow(OutOfRange);
    expect(() => lightLoss({ effectiveFNumber: 0, fNumber: 8 })).toThrow(/effective-f-number is 0/);
  });
});
