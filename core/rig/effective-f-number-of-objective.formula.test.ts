import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumberOfObjective } from './effective-f-number-of-objective.formula.ts';

const example = { magnification: 10, numericalAperture: 0.25 };

describe('effectiveFNumberOfObjective', () => {
  it('is f/20 for a tenfold objective of 0.25', () => {
    expect(effectiveFNumberOfObjective(example)).toBe(20);
  });

  it('doubles with the magnification', () => {
    expect(effectiveFNumberOfObjective({ ...example, magnification: 20 })).toBe(40);
  });

  it('tends to half the magnification as the aperture tends to one', () => {
    expect(effectiveFNumberOfObjective({ ...example, numericalAperture: 1 - 1e-12 })).toEqual(
      closeTo(5, { relative: 1e-11, because: 'NA is 1e-12 short of 1' }),
    );
  });

  it('refuses an aperture of one by name', () => {
    expect(() => effectiveFNumberOfObjective({ ...example, numericalAperture: 1 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberOfObjective({ ...example, numericalAperture: 1 })).toThrow(/numerical-aperture is 1/);
  });
});
