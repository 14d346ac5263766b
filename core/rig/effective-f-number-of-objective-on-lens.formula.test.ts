import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { effectiveFNumberOfObjectiveOnLens } from './effective-f-number-of-objective-on-lens.formula.ts';

const example = { magnification: 10, numericalAperture: 0.25, fNumber: 8 };

describe('effectiveFNumberOfObjectiveOnLens', () => {
  it('is f/20 for a tenfold objective of 0.25 on its own focal length, whatever the lens behind is marked below that', () => {
    expect(effectiveFNumberOfObjectiveOnLens(example)).toBe(20);
    expect(effectiveFNumberOfObjectiveOnLens({ ...example, fNumber: 2.8 })).toBe(20);
  });

  it('is the mark of the lens behind where that is closed farther', () => {
    expect(effectiveFNumberOfObjectiveOnLens({ ...example, fNumber: 32 })).toBe(32);
  });

  it('halves with the magnification as long as the objective decides', () => {
    expect(effectiveFNumberOfObjectiveOnLens({ ...example, magnification: 5 })).toBe(10);
  });

  it('comes down to the mark as the magnification vanishes', () => {
    expect(effectiveFNumberOfObjectiveOnLens({ ...example, magnification: 1e-9 })).toBe(8);
  });

  it('refuses an aperture of one by name', () => {
    expect(() => effectiveFNumberOfObjectiveOnLens({ ...example, numericalAperture: 1 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberOfObjectiveOnLens({ ...example, numericalAperture: 1 })).toThrow(
      /numerical-aperture is 1/,
    );
  });
});
