import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumberWithConverter } from './effective-f-number-with-converter.formula.ts';

const example = { fNumber: 4, converterFactor: 2, magnification: 1, pupilMagnification: 0.8 };

describe('effectiveFNumberWithConverter', () => {
  it('is f/13 for an f/4 lens on a 2 times converter at life size', () => {
    expect(effectiveFNumberWithConverter(example)).toBe(13);
  });

  it('is k times what the lens alone has at m/k', () => {
    expect(effectiveFNumberWithConverter(example)).toBe(2 * 4 * (1 + 0.5 / 0.8));
  });

  it('is k N for a subject far away', () => {
    expect(effectiveFNumberWithConverter({ ...example, magnification: 0 })).toBe(8);
    expect(effectiveFNumberWithConverter({ ...example, magnification: 1e-12 })).toEqual(
      closeTo(8, { relative: 1e-11, because: 'm is 1e-12' }),
    );
  });

  it('refuses a factor of one by name', () => {
    expect(() => effectiveFNumberWithConverter({ ...example, converterFactor: 1 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberWithConverter({ ...example, converterFactor: 1 })).toThrow(/converter-factor is 1/);
  });
});
