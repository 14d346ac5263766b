import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { closeUpPowerForMagnification } from './close-up-power-for-magnification.formula.ts';
import { magnificationOfCloseUpLens } from './magnification-of-close-up-lens.formula.ts';

const example = { magnification: 0.5, focalLength: 100 };

describe('closeUpPowerForMagnification', () => {
  it('is five dioptres for half life size on 100 mm', () => {
    expect(closeUpPowerForMagnification(example)).toBe(5);
  });

  it('is what gives that magnification', () => {
    const closeUpPower = closeUpPowerForMagnification({ magnification: 0.37, focalLength: 135 });
    expect(magnificationOfCloseUpLens({ focalLength: 135, closeUpPower })).toEqual(
      closeTo(0.37, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('halves when the focal length doubles', () => {
    expect(closeUpPowerForMagnification({ ...example, focalLength: 200 })).toBe(2.5);
  });

  it('tends to nothing with the size', () => {
    expect(closeUpPowerForMagnification({ ...example, magnification: 1e-9 })).toEqual(
      closeTo(1e-8, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => closeUpPowerForMagnification({ ...example, magnification: 0 })).toThrow(OutOfRange);
    expect(() => closeUpPowerForMagnification({ ...example, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
