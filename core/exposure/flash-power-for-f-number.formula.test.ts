import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumberFromGuideNumber } from './effective-f-number-from-guide-number.formula.ts';
import { flashPowerForFNumber } from './flash-power-for-f-number.formula.ts';

/** The twin-arm flash at 250 mm. */
const flash = { guideNumber: 14, iso: 100, flashDistance: 250, effectiveFNumber: 28 };

describe('flashPowerForFNumber', () => {
  it('is a quarter for f/28 at a quarter of a metre with guide number 14', () => {
    expect(flashPowerForFNumber(flash)).toBe(0.25);
  });

  it('doubles with a stop of f-number and is four times as much at twice the distance', () => {
    expect(flashPowerForFNumber({ ...flash, effectiveFNumber: 28 * Math.SQRT2 })).toEqual(
      closeTo(0.5, { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(flashPowerForFNumber({ ...flash, flashDistance: 500 })).toBe(1);
  });

  it('undoes the guide number’s f-number', () => {
    const flashPower = flashPowerForFNumber(flash);
    expect(effectiveFNumberFromGuideNumber({ ...flash, flashPower })).toEqual(
      closeTo(28, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('exceeds full power where the flash is too weak', () => {
    expect(flashPowerForFNumber({ ...flash, flashDistance: 1000 })).toBe(4);
  });

  it('refuses a guide number of zero by name', () => {
    expect(() => flashPowerForFNumber({ ...flash, guideNumber: 0 })).toThrow(OutOfRange);
    expect(() => flashPowerForFNumber({ ...flash, guideNumber: 0 })).toThrow(/guide-number is 0/);
  });
});
