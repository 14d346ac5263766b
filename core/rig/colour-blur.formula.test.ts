import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { colourBlur } from './colour-blur.formula.ts';
import { colourSpreadOfCloseUpLens } from './colour-spread-of-close-up-lens.formula.ts';

const example = { magnification: 0.5, colourSpread: 4, effectiveFNumber: 8 };

describe('colourBlur', () => {
  it('is an eighth of a millimetre for 4 mm of spread at half life size and f/8', () => {
    expect(colourBlur(example)).toBe(0.125);
  });

  it('goes with the square of the magnification, and with one over the f-number', () => {
    expect(colourBlur({ ...example, magnification: 1 })).toBe(0.5);
    expect(colourBlur({ ...example, effectiveFNumber: 16 })).toBe(0.0625);
  });

  it('is the pupil over the Abbe number for a close-up lens that is as strong as the lens behind it', () => {
    const spread = colourSpreadOfCloseUpLens({ workingDistance: 100, closeUpPower: 10, abbeNumber: 50 });
    expect(colourBlur({ magnification: 1, colourSpread: spread, effectiveFNumber: 100 / 25 })).toEqual(
      closeTo(25 / 50, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('is nothing where the colours meet', () => {
    expect(colourBlur({ ...example, colourSpread: 0 })).toBe(0);
  });

  it('refuses a negative spread and an f-number of zero by name', () => {
    expect(() => colourBlur({ ...example, colourSpread: -1 })).toThrow(OutOfRange);
    expect(() => colourBlur({ ...example, colourSpread: -1 })).toThrow(/colour-spread is -1/);
    expect(() => colourBlur({ ...example, effectiveFNumber: 0 })).toThrow(/effective-f-number is 0/);
  });
});
