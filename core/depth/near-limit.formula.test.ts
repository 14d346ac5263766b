import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { nearLimit } from './near-limit.formula.ts';

/** A symmetric 50 mm lens at life size, f/10: the pupil is 5 mm wide and 100 mm from the subject. */
const seen = { circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 5 };

describe('nearLimit', () => {
  it('is 2/5.02 mm at life size and f/10', () => {
    expect(nearLimit(seen)).toEqual(closeTo(2 / 5.02, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('scales with the whole arrangement', () => {
    const twice = { ...seen, entrancePupilDistance: 200, entrancePupil: 10, circleOfConfusion: 0.04 };
    expect(nearLimit(twice)).toEqual(closeTo(2 * nearLimit(seen), { relative: 1e-15, because: 'a few roundings' }));
  });

  it('never reaches the entrance pupil, however large a blur is allowed', () => {
    const lax = nearLimit({ ...seen, circleOfConfusion: 1e9 });
    expect(lax).toBeLessThan(100);
    expect(lax).toEqual(closeTo(100, { relative: 1e-8, because: 'the limit is approached as m D/c' }));
  });

  it('is half of the distance where the far limit goes to infinity', () => {
    expect(nearLimit({ ...seen, magnification: 0.004 })).toBe(50);
  });

  it('refuses a circle of confusion of zero by name', () => {
    expect(() => nearLimit({ ...seen, circleOfConfusion: 0 })).toThrow(OutOfRange);
    expect(() => nearLimit({ ...seen, circleOfConfusion: 0 })).toThrow(/circle-of-confusion is 0/);
  });
});
