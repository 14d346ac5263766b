import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageDistanceOfSubject } from './image-distance-of-subject.formula.ts';

describe('imageDistanceOfSubject', () => {
  it('is 125 mm for a subject half a metre from a 100 mm lens', () => {
    expect(imageDistanceOfSubject({ focalLength: 100, subjectDistance: 500 })).toBe(125);
  });

  it('gives the subject its distance back when light runs the other way', () => {
    const there = imageDistanceOfSubject({ focalLength: 35, subjectDistance: 220 });
    const back = imageDistanceOfSubject({ focalLength: 35, subjectDistance: there });
    expect(back).toEqual(closeTo(220, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is negative for a subject within the focal length: a virtual image', () => {
    expect(imageDistanceOfSubject({ focalLength: 100, subjectDistance: 50 })).toBe(-100);
  });

  it('tends to the focal length as the subject goes away', () => {
    const far = imageDistanceOfSubject({ focalLength: 100, subjectDistance: 1e12 });
    expect(far).toEqual(closeTo(100, { relative: 2e-10, because: 'the limit is approached as f/s' }));
  });

  it('refuses a subject at the focal length, which has no image', () => {
    expect(() => imageDistanceOfSubject({ focalLength: 100, subjectDistance: 100 })).toThrow(OutOfRange);
    expect(() => imageDistanceOfSubject({ focalLength: 100, subjectDistance: 100 })).toThrow(/subject-distance is 100/);
  });
});
