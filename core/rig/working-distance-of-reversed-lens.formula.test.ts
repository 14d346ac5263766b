import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingDistanceOfReversedLens } from './working-distance-of-reversed-lens.formula.ts';

const example = { reversedLensRegisterDistance: 44, focalLength: 28, magnification: 2 };

describe('workingDistanceOfReversedLens', () => {
  it('is 58 mm for a 28 mm lens at twice life size', () => {
    expect(workingDistanceOfReversedLens(example)).toBe(58);
  });

  it('gains what the register gains', () => {
    expect(workingDistanceOfReversedLens({ ...example, reversedLensRegisterDistance: 46.5 })).toBe(
      workingDistanceOfReversedLens(example) + 2.5,
    );
  });

  it('tends to the register as magnification grows', () => {
    expect(workingDistanceOfReversedLens({ ...example, magnification: 28e9 })).toEqual(
      closeTo(44, { absolute: 1e-8, because: 'f/m is 1e-9 mm' }),
    );
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => workingDistanceOfReversedLens({ ...example, magnification: 0 })).toThrow(OutOfRange);
    expect(() => workingDistanceOfReversedLens({ ...example, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
