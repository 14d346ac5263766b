import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationFromExtension } from './magnification-from-extension.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { extensionForMagnification } from './extension-for-magnification.formula.ts';

describe('extensionForMagnification', () => {
  it('is 45 mm to take a 50 mm lens from 0.1 to life size', () => {
    expect(extensionForMagnification({ magnification: 1, focusMagnification: 0.1, focalLength: 50 })).toBe(45);
  });

  it('is what gives that magnification back', () => {
    const lens = { focusMagnification: 0.12, focalLength: 28 };
    const extension = extensionForMagnification({ ...lens, magnification: 1.7 });
    expect(magnificationFromExtension({ ...lens, extension })).toEqual(
      closeTo(1.7, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('is nothing for what the lens gives by itself', () => {
    expect(extensionForMagnification({ magnification: 0.3, focusMagnification: 0.3, focalLength: 50 })).toBe(0);
  });

  it('refuses less than the lens gives by itself: a ring cannot be taken away', () => {
    const less = { magnification: 0.1, focusMagnification: 0.3, focalLength: 50 };
    expect(() => extensionForMagnification(less)).toThrow(OutOfRange);
    expect(() => extensionForMagnification(less)).toThrow(/magnification is 0.1; accepted: at least 0.3/);
  });
});
