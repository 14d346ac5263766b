import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusBlur } from './defocus-blur.ts';
import { defocusBlurOfEnds } from './defocus-blur-of-ends.formula.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';

const seen = { magnification: 1, subjectDepth: 2, effectiveFNumber: 16 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('defocusBlurOfEnds', () => {
  it('is 62.5 µm at life size and an effective f/16 for a subject 2 mm deep', () => {
    expect(defocusBlurOfEnds(seen)).toBe(0.0625);
  });

  it('is the circle of confusion where the subject is as deep as the depth of field', () => {
    for (const magnification of [0.1, 1, 5]) {
      const lens = { magnification, effectiveFNumber: 11, circleOfConfusion: 0.02 };
      expect(defocusBlurOfEnds({ ...lens, subjectDepth: depthOfFieldCloseUp(lens) })).toEqual(closeTo(0.02, rounding));
    }
  });

  it('halves when the f-number doubles, and grows with the square of the magnification', () => {
    expect(defocusBlurOfEnds({ ...seen, effectiveFNumber: 32 })).toBe(defocusBlurOfEnds(seen) / 2);
    expect(defocusBlurOfEnds({ ...seen, magnification: 3 })).toBe(9 * defocusBlurOfEnds(seen));
  });

  it('is what the exact blur tends to when the entrance pupil is far away', () => {
    // With D = m u/N_w, an end 1 mm off a plane that is 1 km away.
    const u = 1e6;
    const point = { magnification: 1, entrancePupil: u / 16, entrancePupilDistance: u, offset: 1 };
    expect(defocusBlurOfEnds(seen)).toEqual(closeTo(defocusBlur(point), { relative: 2e-6, because: '1 mm in 1 km' }));
  });

  it('refuses a depth below zero by name', () => {
    expect(() => defocusBlurOfEnds({ ...seen, subjectDepth: -1 })).toThrow(OutOfRange);
    expect(() => defocusBlurOfEnds({ ...seen, subjectDepth: -1 })).toThrow(/subject-depth is -1/);
  });
});
