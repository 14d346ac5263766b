import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';

/** Half life size, 100 mm/s, 1/500 s. */
const crawling = { magnification: 0.5, subjectSpeed: 100, exposureTime: 0.002 };

describe('motionBlurOfSubject', () => {
  it('is 0.1 mm at half life size for 100 mm/s and 1/500 s', () => {
    expect(motionBlurOfSubject(crawling)).toEqual(closeTo(0.1, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('halves with the time', () => {
    expect(motionBlurOfSubject({ ...crawling, exposureTime: 0.001 })).toEqual(
      closeTo(0.05, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is nothing for a subject at rest', () => {
    expect(motionBlurOfSubject({ ...crawling, subjectSpeed: 0 })).toBe(0);
  });

  it('refuses an endless time by name', () => {
    expect(() => motionBlurOfSubject({ ...crawling, exposureTime: Infinity })).toThrow(OutOfRange);
    expect(() => motionBlurOfSubject({ ...crawling, exposureTime: Infinity })).toThrow(/exposure-time is Infinity/);
  });
});
