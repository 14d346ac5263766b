import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { colourSpreadOfCloseUpLens } from './colour-spread-of-close-up-lens.formula.ts';

const example = { workingDistance: 250, closeUpPower: 4, abbeNumber: 50 };

describe('colourSpreadOfCloseUpLens', () => {
  it('is 5 mm for four dioptres of V = 50 on a lens at infinity, 1/(ΦV)', () => {
    expect(colourSpreadOfCloseUpLens(example)).toBe(5);
    expect(colourSpreadOfCloseUpLens(example)).toBe(1000 / (4 * 50));
  });

  it('halves when the Abbe number doubles', () => {
    expect(colourSpreadOfCloseUpLens({ ...example, abbeNumber: 100 })).toBe(2.5);
  });

  it('tends to nothing as the glass spreads no colours', () => {
    expect(colourSpreadOfCloseUpLens({ ...example, abbeNumber: 1e12 })).toEqual(
      closeTo(2.5e-10, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('refuses an Abbe number of zero by name', () => {
    expect(() => colourSpreadOfCloseUpLens({ ...example, abbeNumber: 0 })).toThrow(OutOfRange);
    expect(() => colourSpreadOfCloseUpLens({ ...example, abbeNumber: 0 })).toThrow(/abbe-number is 0/);
  });
});
