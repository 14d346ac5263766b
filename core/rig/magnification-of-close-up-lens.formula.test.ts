import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationOfCloseUpLens } from './magnification-of-close-up-lens.formula.ts';

const example = { focalLength: 90, closeUpPower: 4 };

describe('magnificationOfCloseUpLens', () => {
  it('is 0.36 for four dioptres on 90 mm', () => {
    expect(magnificationOfCloseUpLens(example)).toBe(0.36);
  });

  it('doubles with the focal length, as with the power', () => {
    expect(magnificationOfCloseUpLens({ ...example, focalLength: 180 })).toBe(0.72);
    expect(magnificationOfCloseUpLens({ ...example, closeUpPower: 8 })).toBe(0.72);
  });

  it('tends to nothing with the power: a flat glass', () => {
    expect(magnificationOfCloseUpLens({ ...example, closeUpPower: 1e-9 })).toEqual(
      closeTo(9e-11, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('refuses a power of zero by name', () => {
    expect(() => magnificationOfCloseUpLens({ ...example, closeUpPower: 0 })).toThrow(OutOfRange);
    expect(() => magnificationOfCloseUpLens({ ...example, closeUpPower: 0 })).toThrow(/close-up-power is 0/);
  });
});
