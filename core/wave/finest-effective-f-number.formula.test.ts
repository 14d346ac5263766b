import { describe, expect, it } from 'vitest';
import { defocusBlurOfEnds } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { effectiveFNumberForDepth } from '#core/depth/effective-f-number-for-depth.formula.ts';
import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { cutoffFrequency } from './cutoff-frequency.formula.ts';
import { finestEffectiveFNumber } from './finest-effective-f-number.formula.ts';

const green = { circleOfConfusion: 0.02, wavelength: 0.00055 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('finestEffectiveFNumber', () => {
  it('is f/25.7 for a fiftieth of a millimetre in green light', () => {
    expect(finestEffectiveFNumber(green)).toEqual(
      closeTo(25.71, { absolute: 0.005, because: '0.02/(1.41421 × 0.00055), worked to four figures' }),
    );
  });

  it('is what the deepest subject of one frame asks for, whose ends blur as much by defocus as by diffraction', () => {
    for (const magnification of [0.2, 1, 3]) {
      const effectiveFNumber = finestEffectiveFNumber(green);
      const subjectDepth = subjectDepthInOneFrame({ ...green, magnification });
      expect(effectiveFNumberForDepth({ ...green, magnification, subjectDepth })).toEqual(
        closeTo(effectiveFNumber, { relative: 1e-7, because: 'the root of a rounding where two roots meet' }),
      );
      expect(defocusBlurOfEnds({ magnification, subjectDepth, effectiveFNumber })).toEqual(
        closeTo(green.wavelength * effectiveFNumber, rounding),
      );
    }
  });

  it('puts the cutoff at 2 √2 times the frequency that the circle stands for', () => {
    for (const circleOfConfusion of [0.005, 0.013, 0.05]) {
      const effectiveFNumber = finestEffectiveFNumber({ ...green, circleOfConfusion });
      expect(cutoffFrequency({ ...green, effectiveFNumber })).toEqual(
        closeTo((2 * Math.SQRT2) / (2 * circleOfConfusion), rounding),
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
