import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { balancedFocus, evenDepthOf } from './balanced-focus.ts';
import { defocusBlurOfCone } from './blur-of-cone.ts';

describe('balancedFocus', () => {
  it('is 25 mm behind the nearest of 75 mm with the pupil 100 mm in front of the plane', () => {
    // 25/(100 − 25) = 50/(100 + 50)
    const rounding = { relative: 1e-14, because: 'a few roundings' };
    const { toNearest, toFarthest, evenDepth } = balancedFocus({
      subjectDepth: 75,
      inverseEntrancePupilDistance: 0.01,
    });
    expect(toNearest).toEqual(closeTo(25, rounding));
    expect(toFarthest).toEqual(closeTo(50, rounding));
    expect(evenDepth).toEqual(closeTo(100 / 3, rounding));
  });

  it('blurs both ends alike, wherever the pupil is', () => {
    for (const inverseEntrancePupilDistance of [-1, -0.02, 0, 0.02, 1]) {
      const cone = { magnification: 2, effectiveFNumber: 16, inverseEntrancePupilDistance };
      const { toNearest, toFarthest, evenDepth } = balancedFocus({ subjectDepth: 6, inverseEntrancePupilDistance });
      expect(toNearest + toFarthest).toEqual(closeTo(6, { relative: 1e-14, because: 'rounding' }));
      const even = closeTo((4 * evenDepth) / 16, { relative: 1e-13, because: 'rounding' });
      expect(defocusBlurOfCone({ ...cone, offset: -toNearest })).toEqual(even);
      expect(defocusBlurOfCone({ ...cone, offset: toFarthest })).toEqual(even);
    }
  });

  it('is in the middle for a telecentric chain, and tends to it as the subject becomes shallow', () => {
    expect(balancedFocus({ subjectDepth: 3, inverseEntrancePupilDistance: 0 })).toEqual({
      toNearest: 1.5,
      toFarthest: 1.5,
      evenDepth: 1.5,
    });
    const { toNearest } = balancedFocus({ subjectDepth: 1e-4, inverseEntrancePupilDistance: 0.01 });
    expect(toNearest).toEqual(closeTo(5e-5, { relative: 1e-6, because: 'Z/(2u) is left' }));
  });

  it('never reaches the pupil, however deep the subject', () => {
    const deep = { subjectDepth: 1e6, inverseEntrancePupilDistance: 0.01 };
    expect(balancedFocus(deep).toNearest).toBeLessThan(50);
    expect(balancedFocus(deep).evenDepth).toBeLessThan(100);
  });

  it('refuses a depth of zero by name, of which the even depth alone is zero', () => {
    expect(() => balancedFocus({ subjectDepth: 0, inverseEntrancePupilDistance: 0.01 })).toThrow(OutOfRange);
    expect(() => balancedFocus({ subjectDepth: 1, inverseEntrancePupilDistance: NaN })).toThrow(OutOfRange);
    expect(evenDepthOf(0, 0.01)).toBe(0);
  });
});
