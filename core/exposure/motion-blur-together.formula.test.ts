import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { motionBlurTogether } from './motion-blur-together.formula.ts';

/** The sides of a box whose diagonal is 0.07. */
const streaks = { turningMotionBlur: 0.06, sidewaysMotionBlur: 0.02, subjectMotionBlur: 0.03 };

describe('motionBlurTogether', () => {
  it('is the diagonal of a box whose sides are the streaks', () => {
    expect(motionBlurTogether(streaks)).toEqual(closeTo(0.07, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('doubles when all of them do, and is the same whichever is which', () => {
    const doubled = { turningMotionBlur: 0.04, sidewaysMotionBlur: 0.06, subjectMotionBlur: 0.12 };
    expect(motionBlurTogether(doubled)).toEqual(closeTo(0.14, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('grows by a twentieth for a second streak a third as long', () => {
    const two = { turningMotionBlur: 0.03, sidewaysMotionBlur: 0.01, subjectMotionBlur: 0 };
    expect(motionBlurTogether(two) / 0.03).toEqual(closeTo(1.054, { absolute: 5e-4, because: '√(1 + 1/9)' }));
  });

  it('tends to the one that is left as the others vanish', () => {
    expect(motionBlurTogether({ turningMotionBlur: 0, sidewaysMotionBlur: 0, subjectMotionBlur: 0.03 })).toBe(0.03);
  });

  it('refuses a streak below zero by name', () => {
    expect(() => motionBlurTogether({ ...streaks, sidewaysMotionBlur: -0.01 })).toThrow(OutOfRange);
    expect(() => motionBlurTogether({ ...streaks, sidewaysMotionBlur: -0.01 })).toThrow(
      /sideways.motion-blur is -0.01/,
    );
  });
});
