import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureTimeForSubjectSpeed } from './exposure-time-for-subject-speed.formula.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';

const spider = { circleOfConfusion: 0.02, magnification: 0.5, subjectSpeed: 5 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('exposureTimeForSubjectSpeed', () => {
  it('is 1/125 s for 5 mm/s at half life size', () => {
    expect(exposureTimeForSubjectSpeed(spider)).toEqual(closeTo(1 / 125, rounding));
  });

  it('leaves a streak of c', () => {
    for (const magnification of [0.02, 1, 7]) {
      const given = { ...spider, magnification };
      const exposureTime = exposureTimeForSubjectSpeed(given);
      expect(motionBlurOfSubject({ ...given, exposureTime })).toEqual(closeTo(0.02, rounding));
    }
  });

  it('has no end towards what keeps still, and refuses it by name', () => {
    expect(exposureTimeForSubjectSpeed({ ...spider, subjectSpeed: 1e-9 })).toBeGreaterThan(1e6);
    expect(() => exposureTimeForSubjectSpeed({ ...spider, subjectSpeed: 0 })).toThrow(OutOfRange);
    expect(() => exposureTimeForSubjectSpeed({ ...spider, subjectSpeed: 0 })).toThrow(/subject-speed is 0/);
  });
});
