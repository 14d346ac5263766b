import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { nearLimit } from './near-limit.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { farLimit } from './far-limit.formula.ts';

/** A symmetric 50 mm lens at life size, f/10: the pupil is 5 mm wide and 100 mm from the subject. */
const seen = { circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 5 };

describe('farLimit', () => {
  it('is 2/4.98 mm at life size and f/10', () => {
    expect(farLimit(seen)).toEqual(closeTo(2 / 4.98, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('lies farther from the sharp plane than the near limit', () => {
    expect(farLimit(seen)).toBeGreaterThan(nearLimit(seen));
  });

  it('differs from the near limit in its reciprocal by 2/u, whatever the blur', () => {
    for (const circleOfConfusion of [0.005, 0.05, 0.5]) {
      const given = { ...seen, circleOfConfusion };
      const difference = 1 / nearLimit(given) - 1 / farLimit(given);
      expect(difference).toEqual(
        closeTo(2 / 100, { relative: 1e-11, because: 'a difference of numbers 25000 times as large' }),
      );
    }
  });

  it('is infinite where the pupil is no wider than the blur in the subject plane', () => {
    expect(farLimit({ ...seen, entrancePupil: 0.02 })).toBe(Infinity);
    expect(farLimit({ ...seen, entrancePupil: 0.01 })).toBe(Infinity);
    expect(farLimit({ ...seen, entrancePupil: 0.020001 })).toBeLessThan(Infinity);
  });

  it('refuses an entrance pupil at the subject by name', () => {
    expect(() => farLimit({ ...seen, entrancePupilDistance: 0 })).toThrow(OutOfRange);
    expect(() => farLimit({ ...seen, entrancePupilDistance: 0 })).toThrow(/entrance-pupil-distance is 0/);
  });
});
