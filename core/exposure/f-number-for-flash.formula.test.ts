import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { effectiveFNumberFromGuideNumber } from './effective-f-number-from-guide-number.formula.ts';
import { fNumberForFlash } from './f-number-for-flash.formula.ts';

/** The twin-arm flash at 250 mm, a symmetric lens at life size. */
const flash = { guideNumber: 14, iso: 100, flashPower: 0.25, flashDistance: 250, lightLoss: 2 };

describe('fNumberForFlash', () => {
  it('is f/14 where the guide number gives f/28 and the lens loses two stops', () => {
    expect(fNumberForFlash(flash)).toBe(14);
  });

  it('gives, with the lens’s own extension put back, the cone that the flash wants', () => {
    const lens = { fNumber: 8, magnification: 2, pupilMagnification: 0.6 };
    const loss = lightLoss({ fNumber: 8, effectiveFNumber: effectiveFNumber(lens) });
    const fNumber = fNumberForFlash({ ...flash, lightLoss: loss });
    expect(effectiveFNumber({ ...lens, fNumber })).toEqual(
      closeTo(28, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is what the guide number gives where nothing is lost', () => {
    expect(fNumberForFlash({ ...flash, lightLoss: 0 })).toBe(effectiveFNumberFromGuideNumber(flash));
  });

  it('refuses a loss that leaves no f-number by name', () => {
    expect(() => fNumberForFlash({ ...flash, lightLoss: 1e6 })).toThrow(OutOfRange);
    expect(() => fNumberForFlash({ ...flash, lightLoss: 1e6 })).toThrow(/light-loss is 1000000/);
  });
});
