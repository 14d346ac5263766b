import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureTimeForMotionBlur } from './exposure-time-for-motion-blur.formula.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';

const seen = { circleOfConfusion: 0.02, exposureTime: 0.01, motionBlur: 0.05 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('exposureTimeForMotionBlur', () => {
  it('is 1/250 s for 20 µm where 1/100 s draws 50 µm', () => {
    expect(exposureTimeForMotionBlur(seen)).toEqual(closeTo(0.004, rounding));
  });

  it('is the same from the streak of any time', () => {
    const walk = { magnification: 1, subjectSpeed: 5 };
    const slowest = (exposureTime: number) =>
      exposureTimeForMotionBlur({
        ...seen,
        exposureTime,
        motionBlur: motionBlurOfSubject({ ...walk, exposureTime }),
      });
    expect(slowest(0.5)).toEqual(closeTo(slowest(1 / 8000), rounding));
  });

  it('leaves the time as it is where the streak is the limit already', () => {
    expect(exposureTimeForMotionBlur({ ...seen, motionBlur: 0.02 })).toEqual(closeTo(0.01, rounding));
  });

  it('grows without limit as the streak vanishes, and refuses none at all by name', () => {
    expect(exposureTimeForMotionBlur({ ...seen, motionBlur: 1e-30 })).toBeGreaterThan(1e26);
    expect(() => exposureTimeForMotionBlur({ ...seen, motionBlur: 0 })).toThrow(OutOfRange);
    expect(() => exposureTimeForMotionBlur({ ...seen, motionBlur: 0 })).toThrow(/motion-blur is 0/);
  });
});
