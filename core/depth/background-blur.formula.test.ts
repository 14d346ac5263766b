import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { backgroundBlur } from './background-blur.formula.ts';

const view = { magnification: 0.5, entrancePupil: 20, backgroundDistance: 150, entrancePupilDistance: 150 };

describe('backgroundBlur', () => {
  it('is 5 mm for a background twice as far as the subject, half life size, pupil of 20 mm', () => {
    expect(backgroundBlur(view)).toBe(5);
  });

  it('doubles with the width of the pupil', () => {
    expect(backgroundBlur({ ...view, entrancePupil: 40 })).toBe(10);
  });

  it('is nothing in the sharp plane and m D at infinity', () => {
    expect(backgroundBlur({ ...view, backgroundDistance: 0 })).toBe(0);
    expect(backgroundBlur({ ...view, backgroundDistance: 1e12 })).toEqual(
      closeTo(10, { relative: 1e-9, because: 'the limit is approached as u/B' }),
    );
  });

  it('refuses a background in front of the subject by name', () => {
    expect(() => backgroundBlur({ ...view, backgroundDistance: -1 })).toThrow(OutOfRange);
    expect(() => backgroundBlur({ ...view, backgroundDistance: -1 })).toThrow(/background-distance is -1/);
  });
});
