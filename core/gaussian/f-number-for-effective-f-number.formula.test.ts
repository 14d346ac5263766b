import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumber } from './effective-f-number.formula.ts';
import { fNumberForEffectiveFNumber } from './f-number-for-effective-f-number.formula.ts';

const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('fNumberForEffectiveFNumber', () => {
  it('is 8 for f/16 at life size with equal pupils', () => {
    expect(fNumberForEffectiveFNumber({ effectiveFNumber: 16, magnification: 1, pupilMagnification: 1 })).toBe(8);
  });

  it('is the mark that works as wanted', () => {
    const lens = { magnification: 1.7, pupilMagnification: 0.6 };
    const fNumber = fNumberForEffectiveFNumber({ ...lens, effectiveFNumber: 22 });
    expect(effectiveFNumber({ ...lens, fNumber })).toEqual(closeTo(22, rounding));
  });

  it('is the effective f-number itself far away', () => {
    expect(fNumberForEffectiveFNumber({ effectiveFNumber: 11, magnification: 0, pupilMagnification: 0.5 })).toBe(11);
  });

  it('refuses pupils without size by name', () => {
    const given = { effectiveFNumber: 11, magnification: 1, pupilMagnification: 0 };
    expect(() => fNumberForEffectiveFNumber(given)).toThrow(OutOfRange);
    expect(() => fNumberForEffectiveFNumber(given)).toThrow(/pupil-magnification is 0/);
  });
});
