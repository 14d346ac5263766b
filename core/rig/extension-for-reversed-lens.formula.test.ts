import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { extensionForReversedLens } from './extension-for-reversed-lens.formula.ts';

const example = { focalLength: 28, magnification: 2, registerDistance: 44, frontPrincipalDepth: 36 };

describe('extensionForReversedLens', () => {
  it('is 4 mm for twice life size with 28 mm', () => {
    expect(extensionForReversedLens(example)).toBe(4);
  });

  it('grows by a focal length for every one of magnification', () => {
    expect(extensionForReversedLens({ ...example, magnification: 3 })).toBe(32);
  });

  it('is nothing at the magnification of the bare camera', () => {
    expect(extensionForReversedLens({ ...example, magnification: 80 / 28 - 1 })).toEqual(
      closeTo(0, { absolute: 1e-13, because: 'rounding of 80 mm' }),
    );
  });

  it('refuses a magnification that the lens exceeds by itself by name', () => {
    expect(() => extensionForReversedLens({ ...example, magnification: 1 })).toThrow(OutOfRange);
    expect(() => extensionForReversedLens({ ...example, magnification: 1 })).toThrow(/magnification is 1/);
  });
});
