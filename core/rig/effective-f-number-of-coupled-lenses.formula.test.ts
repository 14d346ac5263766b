import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { effectiveFNumberOfCoupledLenses } from './effective-f-number-of-coupled-lenses.formula.ts';

const example = { mainLensFNumber: 8, magnification: 4, reversedLensFNumber: 1.8 };

describe('effectiveFNumberOfCoupledLenses', () => {
  it('is the main lens’s f/8 where the lens turned round is open', () => {
    expect(effectiveFNumberOfCoupledLenses(example)).toBe(8);
  });

  it('is m times the mark of the lens turned round where that is closed', () => {
    expect(effectiveFNumberOfCoupledLenses({ ...example, reversedLensFNumber: 8 })).toBe(32);
  });

  it('changes hands where both openings are as wide', () => {
    expect(effectiveFNumberOfCoupledLenses({ ...example, reversedLensFNumber: 2 })).toBe(8);
    expect(effectiveFNumberOfCoupledLenses({ ...example, reversedLensFNumber: 2.5 })).toBe(10);
  });

  it('is the main lens’s mark as the other opens without end', () => {
    expect(effectiveFNumberOfCoupledLenses({ ...example, reversedLensFNumber: 1e-12 })).toBe(8);
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => effectiveFNumberOfCoupledLenses({ ...example, magnification: 0 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberOfCoupledLenses({ ...example, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
