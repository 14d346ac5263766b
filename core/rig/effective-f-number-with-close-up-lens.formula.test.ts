import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumberWithCloseUpLens } from './effective-f-number-with-close-up-lens.formula.ts';

const example = { fNumber: 8, focusMagnification: 0.15, pupilMagnification: 1.2 };

describe('effectiveFNumberWithCloseUpLens', () => {
  it('is f/9 for a lens marked f/8 that is focused to 0.15', () => {
    expect(effectiveFNumberWithCloseUpLens(example)).toEqual(closeTo(9, { relative: 1e-14, because: 'rounding' }));
  });

  it('doubles when the f-number doubles', () => {
    expect(effectiveFNumberWithCloseUpLens({ ...example, fNumber: 16 })).toBe(
      2 * effectiveFNumberWithCloseUpLens(example),
    );
  });

  it('is the marked f-number itself on a lens at infinity', () => {
    expect(effectiveFNumberWithCloseUpLens({ ...example, focusMagnification: 0 })).toBe(8);
  });

  it('refuses a negative focus magnification by name', () => {
    expect(() => effectiveFNumberWithCloseUpLens({ ...example, focusMagnification: -1 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberWithCloseUpLens({ ...example, focusMagnification: -1 })).toThrow(
      /focus-magnification is -1/,
    );
  });
});
