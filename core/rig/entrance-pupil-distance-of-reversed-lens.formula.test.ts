import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupilDistanceOfReversedLens } from './entrance-pupil-distance-of-reversed-lens.formula.ts';

const example = { focalLength: 28, magnification: 2, pupilMagnification: 1.5 };

describe('entrancePupilDistanceOfReversedLens', () => {
  it('is 56 mm for a 28 mm retrofocus lens at twice life size', () => {
    expect(entrancePupilDistanceOfReversedLens(example)).toBe(56);
  });

  it('doubles when the focal length doubles', () => {
    expect(entrancePupilDistanceOfReversedLens({ ...example, focalLength: 56 })).toBe(112);
  });

  it('tends to P f as magnification grows', () => {
    expect(entrancePupilDistanceOfReversedLens({ ...example, magnification: 1e12 })).toEqual(
      closeTo(42, { relative: 1e-11, because: '1/m is 1e-12' }),
    );
  });

  it('refuses a negative focal length by name', () => {
    expect(() => entrancePupilDistanceOfReversedLens({ ...example, focalLength: -28 })).toThrow(OutOfRange);
    expect(() => entrancePupilDistanceOfReversedLens({ ...example, focalLength: -28 })).toThrow(/focal-length is -28/);
  });
});
