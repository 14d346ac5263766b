import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationOfSubject } from './magnification-of-subject.formula.ts';

describe('magnificationOfSubject', () => {
  it('is 1:4 for a subject half a metre from a 100 mm lens', () => {
    expect(magnificationOfSubject({ focalLength: 100, subjectDistance: 500 })).toBe(0.25);
  });

  it('is life size at twice the focal length, whatever the lens', () => {
    for (const focalLength of [20, 50, 180]) {
      expect(magnificationOfSubject({ focalLength, subjectDistance: 2 * focalLength })).toBe(1);
    }
  });

  it('is without sign for the virtual image of a subject within the focal length', () => {
    expect(magnificationOfSubject({ focalLength: 100, subjectDistance: 50 })).toBe(2);
  });

  it('tends to f/s as the subject goes away', () => {
    const far = magnificationOfSubject({ focalLength: 50, subjectDistance: 1e10 });
    expect(far).toEqual(closeTo(5e-9, { relative: 1e-8, because: 'the limit is approached as f/s' }));
  });

  it('refuses a subject at the focal length, which has no image', () => {
    expect(() => magnificationOfSubject({ focalLength: 50, subjectDistance: 50 })).toThrow(OutOfRange);
    expect(() => magnificationOfSubject({ focalLength: 50, subjectDistance: 50 })).toThrow(/subject-distance is 50/);
  });
});
