import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { subjectDistance } from './subject-distance.formula.ts';

describe('subjectDistance', () => {
  it('is 150 mm for a 50 mm lens at half life size', () => {
    expect(subjectDistance({ focalLength: 50, magnification: 0.5 })).toBe(150);
  });

  it('scales with the focal length at the same magnification', () => {
    const short = subjectDistance({ focalLength: 50, magnification: 0.7 });
    const long = subjectDistance({ focalLength: 100, magnification: 0.7 });
    expect(long).toEqual(closeTo(2 * short, { relative: 1e-15, because: 'one rounding' }));
  });

  it('tends to the focal length as magnification grows, and stays above it', () => {
    const strong = subjectDistance({ focalLength: 50, magnification: 1e9 });
    expect(strong).toEqual(closeTo(50, { relative: 2e-9, because: 'the limit is approached as 1/m' }));
    expect(strong).toBeGreaterThan(50);
  });

  it('refuses a magnification of zero by name: the subject would be infinitely far', () => {
    expect(() => subjectDistance({ focalLength: 50, magnification: 0 })).toThrow(OutOfRange);
    expect(() => subjectDistance({ focalLength: 50, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
