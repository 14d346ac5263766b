import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { effectiveFNumberFromGuideNumber } from './effective-f-number-from-guide-number.formula.ts';

/** The twin-arm flash of guide number 14, a quarter of its power, at 250 mm. */
const flash = { guideNumber: 14, iso: 100, flashPower: 0.25, flashDistance: 250 };

describe('effectiveFNumberFromGuideNumber', () => {
  it('is f/28 for guide number 14, a quarter of the power and a quarter of a metre', () => {
    expect(effectiveFNumberFromGuideNumber(flash)).toBe(28);
  });

  it('halves with twice the distance, and doubles with four times the ISO', () => {
    expect(effectiveFNumberFromGuideNumber({ ...flash, flashDistance: 500 })).toBe(14);
    expect(effectiveFNumberFromGuideNumber({ ...flash, iso: 400 })).toBe(56);
  });

  it('is the guide number at full power and one metre', () => {
    expect(effectiveFNumberFromGuideNumber({ guideNumber: 14, iso: 100, flashPower: 1, flashDistance: 1000 })).toBe(14);
  });

  it('refuses more than full power by name', () => {
    expect(() => effectiveFNumberFromGuideNumber({ ...flash, flashPower: 2 })).toThrow(OutOfRange);
    expect(() => effectiveFNumberFromGuideNumber({ ...flash, flashPower: 2 })).toThrow(/flash-power is 2/);
  });
});
