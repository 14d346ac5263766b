import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { sharpWidthOfTilt } from './sharp-width-of-tilt.formula.ts';
import { subjectDepthOfTilt } from './subject-depth-of-tilt.formula.ts';

/** Thirty millimetres of wing, tilted by 30°, of which 2 mm of depth are sharp. */
const wing = { subjectWidth: 30, depthOfField: 2, subjectTilt: Math.PI / 6 };
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('sharpWidthOfTilt', () => {
  it('is 4 mm where 2 mm of depth are sharp and the subject leans by 30°', () => {
    expect(sharpWidthOfTilt(wing)).toEqual(closeTo(4, rounding));
  });

  it('is a length that is as deep as the depth of field', () => {
    for (const subjectTilt of [0.1, 0.7, 1.5])
      expect(subjectDepthOfTilt({ subjectTilt, subjectWidth: sharpWidthOfTilt({ ...wing, subjectTilt }) })).toEqual(
        closeTo(2, rounding),
      );
  });

  it('is all of a subject that is square to the axis, or short, or has no far limit behind it', () => {
    expect(sharpWidthOfTilt({ ...wing, subjectTilt: 0 })).toBe(30);
    expect(sharpWidthOfTilt({ ...wing, subjectWidth: 3 })).toBe(3);
    expect(sharpWidthOfTilt({ ...wing, depthOfField: Infinity })).toBe(30);
  });

  it('refuses a depth of nothing and a tilt of more than a right angle by name', () => {
    expect(() => sharpWidthOfTilt({ ...wing, depthOfField: 0 })).toThrow(OutOfRange);
    expect(() => sharpWidthOfTilt({ ...wing, depthOfField: 0 })).toThrow(/depth-of-field is 0/);
    expect(() => sharpWidthOfTilt({ ...wing, subjectTilt: 2 })).toThrow(/subject-tilt is 2/);
  });
});
