import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { backgroundBlur } from './background-blur.formula.ts';
import { farLimit } from './far-limit.formula.ts';
import { nearLimit } from './near-limit.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusBlur } from './defocus-blur.ts';

const seen = { magnification: 1, entrancePupil: 5, entrancePupilDistance: 100 };

describe('defocusBlur', () => {
  it('is 1.25 mm for a point 20 mm nearer than a sharp plane at 100 mm, pupil of 5 mm, life size', () => {
    expect(defocusBlur({ ...seen, offset: -20 })).toBe(1.25);
  });

  it('is smaller behind the sharp plane than as far in front of it', () => {
    expect(defocusBlur({ ...seen, offset: 20 })).toBeLessThan(defocusBlur({ ...seen, offset: -20 }));
  });

  it('is the circle of confusion at both limits of the depth of field', () => {
    const circle = closeTo(0.02, { relative: 1e-12, because: 'a few roundings, 250 times enlarged' });
    const given = { ...seen, circleOfConfusion: 0.02 };
    expect(defocusBlur({ ...seen, offset: -nearLimit(given) })).toEqual(circle);
    expect(defocusBlur({ ...seen, offset: farLimit(given) })).toEqual(circle);
  });

  it('is nothing in the sharp plane, and that of a background behind it', () => {
    expect(defocusBlur({ ...seen, offset: 0 })).toBe(0);
    expect(defocusBlur({ ...seen, offset: 40 })).toBe(backgroundBlur({ ...seen, backgroundDistance: 40 }));
  });

  it('refuses a point at or behind the entrance pupil, and an infinite offset', () => {
    expect(() => defocusBlur({ ...seen, offset: -100 })).toThrow(OutOfRange);
    expect(() => defocusBlur({ ...seen, offset: -130 })).toThrow(/entrance-pupil-distance is -30/);
    expect(() => defocusBlur({ ...seen, offset: Infinity })).toThrow(OutOfRange);
  });
});
