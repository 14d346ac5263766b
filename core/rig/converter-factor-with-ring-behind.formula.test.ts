import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { converterFactorWithRingBehind } from './converter-factor-with-ring-behind.formula.ts';

const example = { converterFactor: 2, rearRingExtension: 36, converterLength: 40 };

describe('converterFactorWithRingBehind', () => {
  it('is 2.45 for 36 mm behind a 2 times converter of 40 mm', () => {
    expect(converterFactorWithRingBehind(example)).toBe(2.45);
  });

  it('grows beyond the engraved factor by as much again when the ring doubles', () => {
    expect(converterFactorWithRingBehind({ ...example, rearRingExtension: 72 })).toBeCloseTo(2.9, 12);
  });

  it('is what is engraved without a ring', () => {
    expect(converterFactorWithRingBehind({ ...example, rearRingExtension: 0 })).toBe(2);
  });

  it('refuses a factor of one by name', () => {
    expect(() => converterFactorWithRingBehind({ ...example, converterFactor: 1 })).toThrow(OutOfRange);
    expect(() => converterFactorWithRingBehind({ ...example, converterFactor: 1 })).toThrow(/converter-factor is 1/);
  });
});
