import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';
import { farLimit } from './far-limit.formula.ts';
import { nearLimit } from './near-limit.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfField } from './depth-of-field.formula.ts';

/** A symmetric 50 mm lens at life size, f/10: the pupil is 5 mm wide and 100 mm from the subject. */
const seen = { circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 5 };

describe('depthOfField', () => {
  it('is 20/24.9996 mm at life size and f/10', () => {
    expect(depthOfField(seen)).toEqual(closeTo(20 / 24.9996, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('is the near and the far limit together', () => {
    expect(depthOfField(seen)).toBe(nearLimit(seen) + farLimit(seen));
  });

  it('tends to the close-up form as the blur gets small beside the pupil', () => {
    const strict = depthOfField({ ...seen, circleOfConfusion: 1e-6 });
    const closeUp = depthOfFieldCloseUp({ circleOfConfusion: 1e-6, effectiveFNumber: 20, magnification: 1 });
    expect(strict).toEqual(
      closeTo(closeUp, { relative: 1e-12, because: 'the limit is approached as the square of c/(m D)' }),
    );
  });

  it('is infinite where the far limit is', () => {
    expect(depthOfField({ ...seen, magnification: 0.001 })).toBe(Infinity);
  });

  it('refuses a pupil that is no number by name', () => {
    expect(() => depthOfField({ ...seen, entrancePupil: NaN })).toThrow(OutOfRange);
    expect(() => depthOfField({ ...seen, entrancePupil: NaN })).toThrow(/entrance-pupil is NaN/);
  });
});
