import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { cutoffFrequency } from './cutoff-frequency.formula.ts';
import { finestEffectiveFNumber } from './finest-effective-f-number.formula.ts';

const green = { circleOfConfusion: 0.02, wavelength: 0.00055 };

describe('finestEffectiveFNumber', () => {
  it('is f/36.4 for a fiftieth of a millimetre in green light', () => {
    expect(finestEffectiveFNumber(green)).toEqual(
      closeTo(36.36, { absolute: 0.005, because: '0.02/0.00055, worked to four figures' }),
    );
  });

  it('puts the cutoff at twice the frequency that the circle stands for', () => {
    for (const circleOfConfusion of [0.005, 0.013, 0.05]) {
      const effectiveFNumber = finestEffectiveFNumber({ ...green, circleOfConfusion });
      expect(cutoffFrequency({ ...green, effectiveFNumber })).toEqual(
        closeTo(1 / circleOfConfusion, { relative: 1e-14, because: 'a few roundings' }),
      );
    }
  });

  it('is halved by half the circle', () => {
    expect(finestEffectiveFNumber({ ...green, circleOfConfusion: 0.01 })).toBe(finestEffectiveFNumber(green) / 2);
  });

  it('refuses light without a wavelength by name', () => {
    expect(() => finestEffectiveFNumber({ ...green, wavelength: 0 })).toThrow(OutOfRange);
    expect(() => finestEffectiveFNumber({ ...green, wavelength: 0 })).toThrow(/wavelength is 0/);
  });
});
