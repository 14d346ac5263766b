import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { effectiveFNumberOfObjective } from '#core/rig/effective-f-number-of-objective.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { numericalAperture } from './numerical-aperture.formula.ts';

describe('numericalAperture', () => {
  it('is 0.6 for six times life size at an effective f/5', () => {
    expect(numericalAperture({ magnification: 6, effectiveFNumber: 5 })).toBe(0.6);
  });

  it('is what is engraved on the objective that makes the cone', () => {
    const cone = { magnification: 10, numericalAperture: 0.25 };
    expect(numericalAperture({ ...cone, effectiveFNumber: effectiveFNumberOfObjective(cone) })).toBe(0.25);
  });

  it('falls 3.3 % short of the tangent at an aperture of 0.25', () => {
    const sine = numericalAperture({ magnification: 1, effectiveFNumber: 2 });
    expect(Math.tan(Math.asin(sine)) / sine - 1).toEqual(
      closeTo(0.033, { absolute: 0.0005, because: 'stated in per cent to one decimal' }),
    );
  });

  it('tends to nothing for a narrow cone, and refuses one that air cannot hold', () => {
    expect(numericalAperture({ magnification: 1e-4, effectiveFNumber: 5 })).toBe(1e-5);
    expect(() => numericalAperture({ magnification: 10, effectiveFNumber: 5 })).toThrow(/effective-f-number is 5/);
  });

  it('refuses an effective f-number of zero by name', () => {
    expect(() => numericalAperture({ magnification: 1, effectiveFNumber: 0 })).toThrow(OutOfRange);
    expect(() => numericalAperture({ magnification: 1, effectiveFNumber: 0 })).toThrow(/effective-f-number is 0/);
  });
});
