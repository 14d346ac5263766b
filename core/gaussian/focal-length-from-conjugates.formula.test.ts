import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focalLengthFromConjugates } from './focal-length-from-conjugates.formula.ts';

describe('focalLengthFromConjugates', () => {
  it('is 50 mm for a subject at 150 mm imaged at 75 mm', () => {
    expect(focalLengthFromConjugates({ subjectDistance: 150, imageDistance: 75 })).toBe(50);
  });

  it('is the same when subject and image change places', () => {
    const there = focalLengthFromConjugates({ subjectDistance: 310, imageDistance: 47 });
    expect(focalLengthFromConjugates({ subjectDistance: 47, imageDistance: 310 })).toBe(there);
  });

  it('tends to the image distance as the subject goes away', () => {
    const far = focalLengthFromConjugates({ subjectDistance: 1e12, imageDistance: 50 });
    expect(far).toEqual(closeTo(50, { relative: 1e-10, because: "the limit is approached as s'/s" }));
  });

  it('knows a magnifier by its virtual image', () => {
    expect(focalLengthFromConjugates({ subjectDistance: 50, imageDistance: -100 })).toBe(100);
  });

  it('refuses a virtual image nearer than the subject, and one at the lens: no converging lens makes them', () => {
    expect(() => focalLengthFromConjugates({ subjectDistance: 50, imageDistance: -20 })).toThrow(OutOfRange);
    expect(() => focalLengthFromConjugates({ subjectDistance: 50, imageDistance: -50 })).toThrow(OutOfRange);
    expect(() => focalLengthFromConjugates({ subjectDistance: 50, imageDistance: 0 })).toThrow(/image-distance is 0/);
  });
});
