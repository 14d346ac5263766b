import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { numericalAperture } from './numerical-aperture.formula.ts';

describe('numericalAperture', () => {
  it('is 0.6 for the cone with sides 3, 4, 5', () => {
    // Tangent m/(2 N_w) = 3/4, so the sine is 3/5.
    expect(numericalAperture({ magnification: 6, effectiveFNumber: 4 })).toBe(0.6);
  });

  it('is the sine of the angle whose tangent is m/(2 N_w)', () => {
    const sine = numericalAperture({ magnification: 5, effectiveFNumber: 12 });
    expect(sine).toEqual(closeTo(Math.sin(Math.atan(5 / 24)), { relative: 1e-15, because: 'a few roundings' }));
  });

  it('falls 3.3 % short of the tangent at an aperture of 0.25', () => {
    const tangent = 0.25 / Math.sqrt(1 - 0.25 ** 2);
    const sine = numericalAperture({ magnification: 2 * tangent, effectiveFNumber: 1 });
    expect(sine).toEqual(closeTo(0.25, { relative: 1e-14, because: 'a few roundings' }));
    expect(tangent / sine - 1).toEqual(
      closeTo(0.033, { absolute: 0.0005, because: 'stated in per cent to one decimal' }),
    );
  });

  it('tends to the tangent for a narrow cone, and never reaches 1 for a wide one', () => {
    expect(numericalAperture({ magnification: 1e-4, effectiveFNumber: 5 })).toEqual(
      closeTo(1e-5, { relative: 1e-9, because: 'sine and tangent part by half the square of the angle' }),
    );
    expect(numericalAperture({ magnification: 1000, effectiveFNumber: 1 })).toBeLessThan(1);
  });

  it('refuses an effective f-number of zero by name', () => {
    expect(() => numericalAperture({ magnification: 1, effectiveFNumber: 0 })).toThrow(OutOfRange);
    expect(() => numericalAperture({ magnification: 1, effectiveFNumber: 0 })).toThrow(/effective-f-number is 0/);
  });
});
