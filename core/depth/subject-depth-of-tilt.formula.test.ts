import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { subjectDepthOfTilt } from './subject-depth-of-tilt.formula.ts';

/** Twenty millimetres of leaf, tilted by 30°. */
const leaf = { subjectWidth: 20, subjectTilt: Math.PI / 6 };

describe('subjectDepthOfTilt', () => {
  it('is 10 mm for 20 mm tilted by 30°', () => {
    expect(subjectDepthOfTilt(leaf)).toEqual(closeTo(10, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('goes as the length', () => {
    expect(subjectDepthOfTilt({ ...leaf, subjectWidth: 40 })).toEqual(
      closeTo(20, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is nothing square to the axis and the length itself along it', () => {
    expect(subjectDepthOfTilt({ ...leaf, subjectTilt: 0 })).toBe(0);
    expect(subjectDepthOfTilt({ ...leaf, subjectTilt: Math.PI / 2 })).toBe(20);
  });

  it('refuses a tilt of more than a right angle by name', () => {
    expect(() => subjectDepthOfTilt({ ...leaf, subjectTilt: 2 })).toThrow(OutOfRange);
    expect(() => subjectDepthOfTilt({ ...leaf, subjectTilt: 2 })).toThrow(/subject-tilt is 2/);
  });
});
