import { describe, expect, it } from 'vitest';
import { defocusBlurOfEnds } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyDiameter } from './airy-diameter.formula.ts';
import { balancedFNumber } from './balanced-f-number.formula.ts';

const seen = { magnification: 1, subjectDepth: 2, wavelength: 0.00055, pupilMagnification: 0.85 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('balancedFNumber', () => {
  it('is f/12.5 at life size for 2 mm of depth, green light and pupils of 0.85', () => {
    // √(2/(4 × 1.21967 × 0.00055)) = 27.30; over 1 + 1/0.85 = 2.1765.
    expect(balancedFNumber(seen)).toEqual(closeTo(12.54, { absolute: 0.005, because: 'worked to four figures' }));
  });

  it('is where the ends of the depth are blurred as widely as the Airy disc', () => {
    for (const magnification of [0.2, 1, 4]) {
      const lens = { ...seen, magnification };
      const cone = { ...lens, effectiveFNumber: effectiveFNumber({ ...lens, fNumber: balancedFNumber(lens) }) };
      expect(defocusBlurOfEnds(cone)).toEqual(closeTo(airyDiameter(cone), rounding));
    }
  });

  it('rises by one stop, √2, when the subject is twice as deep', () => {
    expect(balancedFNumber({ ...seen, subjectDepth: 4 })).toEqual(
      closeTo(Math.SQRT2 * balancedFNumber(seen), rounding),
    );
  });

  it('tends to P √(Z/4.88 λ) at great magnifications', () => {
    expect(balancedFNumber({ ...seen, magnification: 1e9 })).toEqual(
      closeTo(0.85 * balancedFNumber({ ...seen, pupilMagnification: 1e18 }), {
        relative: 1e-8,
        because: 'm is a billion times P',
      }),
    );
  });

  it('refuses a subject without depth by name', () => {
    expect(() => balancedFNumber({ ...seen, subjectDepth: 0 })).toThrow(OutOfRange);
    expect(() => balancedFNumber({ ...seen, subjectDepth: 0 })).toThrow(/subject-depth is 0/);
    expect(() => balancedFNumber({ ...seen, pupilMagnification: 0 })).toThrow(/pupil-magnification is 0/);
  });
});
