import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusBlurOfEnds } from './defocus-blur-of-ends.formula.ts';
import { effectiveFNumberForDepth } from './effective-f-number-for-depth.formula.ts';
import { subjectDepthInOneFrame } from './subject-depth-in-one-frame.formula.ts';

/** Life size, 0.8 mm to be sharp. */
const petal = { magnification: 1, subjectDepth: 0.8, circleOfConfusion: 0.025, wavelength: 0.0005 };

describe('effectiveFNumberForDepth', () => {
  it('is 17.02 for 0.8 mm at life size, where geometry alone would be content with 16', () => {
    expect(effectiveFNumberForDepth(petal)).toEqual(closeTo(17.0156, { absolute: 0.0001, because: 'so printed' }));
  });

  it('leaves a blur of defocus and diffraction together that is c', () => {
    for (const subjectDepth of [0.01, 0.3, 1, 1.24]) {
      const given = { ...petal, subjectDepth };
      const effectiveFNumber = effectiveFNumberForDepth(given);
      const both = Math.hypot(defocusBlurOfEnds({ ...given, effectiveFNumber }), petal.wavelength * effectiveFNumber);
      expect(both).toEqual(closeTo(petal.circleOfConfusion, { relative: 1e-12, because: 'a few roundings' }));
    }
  });

  it('ends at c/(√2 λ), a stop before diffraction alone blurs by c', () => {
    const deepest = subjectDepthInOneFrame(petal);
    const { circleOfConfusion: c, wavelength } = petal;
    expect(effectiveFNumberForDepth({ ...petal, subjectDepth: deepest })).toEqual(
      closeTo(c / (Math.SQRT2 * wavelength), { relative: 1e-6, because: 'the two roots meet there: half the digits' }),
    );
    expect(effectiveFNumberForDepth({ ...petal, subjectDepth: 0 })).toBe(0);
  });

  it('refuses a depth that no opening holds by name', () => {
    const deeper = { ...petal, subjectDepth: 1.0001 * subjectDepthInOneFrame(petal) };
    expect(() => effectiveFNumberForDepth(deeper)).toThrow(OutOfRange);
    expect(() => effectiveFNumberForDepth(deeper)).toThrow(/subject-depth is 1\.25/);
  });
});
