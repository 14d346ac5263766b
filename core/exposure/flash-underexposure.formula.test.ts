import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { flashUnderexposure } from './flash-underexposure.formula.ts';

describe('flashUnderexposure', () => {
  it('is two stops where the lens works at twice the f-number that the flash suits', () => {
    expect(flashUnderexposure({ effectiveFNumber: 22, flashEffectiveFNumber: 11 })).toBe(2);
  });

  it('is nothing where both agree, and changes its sign where they change places', () => {
    expect(flashUnderexposure({ effectiveFNumber: 8, flashEffectiveFNumber: 8 })).toBe(0);
    const dark = flashUnderexposure({ effectiveFNumber: 19, flashEffectiveFNumber: 7 });
    const bright = flashUnderexposure({ effectiveFNumber: 7, flashEffectiveFNumber: 19 });
    expect(dark).toEqual(closeTo(-bright, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('refuses a flash that suits no f-number, by name', () => {
    expect(() => flashUnderexposure({ effectiveFNumber: 8, flashEffectiveFNumber: 0 })).toThrow(OutOfRange);
    expect(() => flashUnderexposure({ effectiveFNumber: 8, flashEffectiveFNumber: 0 })).toThrow(
      /flash.effective-f-number is 0/,
    );
  });
});
