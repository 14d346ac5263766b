import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumber } from './effective-f-number.formula.ts';

const lifeSize = { fNumber: 8, magnification: 1, pupilMagnification: 1 };

describe('effectiveFNumber', () => {
  it('is f/16 for a symmetric lens marked f/8 at life size', () => {
    expect(effectiveFNumber(lifeSize)).toBe(16);
  });

  it('doubles when the f-number doubles', () => {
    const asymmetric = { ...lifeSize, magnification: 2, pupilMagnification: 0.6 };
    const doubled = effectiveFNumber({ ...asymmetric, fNumber: 16 });
    expect(doubled).toEqual(closeTo(2 * effectiveFNumber(asymmetric), { relative: 1e-15, because: 'one rounding' }));
  });

  it('tends to the marked f-number as the subject goes away', () => {
    const far = effectiveFNumber({ ...lifeSize, magnification: 1e-9 });
    expect(far).toEqual(closeTo(8, { relative: 2e-9, because: 'the limit is approached as m/P' }));
  });

  it('is the number itself of a lens at infinity', () => {
    expect(effectiveFNumber({ ...lifeSize, magnification: 0 })).toBe(lifeSize.fNumber);
  });

  it('refuses a magnification below zero by name', () => {
    expect(() => effectiveFNumber({ ...lifeSize, magnification: -1 })).toThrow(OutOfRange);
    expect(() => effectiveFNumber({ ...lifeSize, magnification: -1 })).toThrow(/magnification is -1/);
  });
});
