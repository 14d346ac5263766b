import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { farLimitOfCone } from './far-limit-of-cone.formula.ts';
import { nearLimitOfCone } from './near-limit-of-cone.formula.ts';

const seen = { circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: 0.01 };

describe('farLimitOfCone', () => {
  it('is 0.4/0.996 mm at life size and an effective f/20, the pupil 100 mm in front', () => {
    expect(farLimitOfCone(seen)).toEqual(closeTo(0.4 / 0.996, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the near limit with the pupil on the other side, and equal to it for a telecentric chain', () => {
    expect(farLimitOfCone(seen)).toBe(nearLimitOfCone({ ...seen, inverseEntrancePupilDistance: -0.01 }));
    const telecentric = { ...seen, inverseEntrancePupilDistance: 0 };
    expect(farLimitOfCone(telecentric)).toBe(nearLimitOfCone(telecentric));
  });

  it('goes to infinity as the pupil comes down to the circle in the subject plane', () => {
    expect(farLimitOfCone({ ...seen, inverseEntrancePupilDistance: 2.4999 })).toBeGreaterThan(9000);
    expect(farLimitOfCone({ ...seen, inverseEntrancePupilDistance: 2.5 })).toBe(Infinity);
  });

  it('refuses a circle of confusion of zero by name', () => {
    expect(() => farLimitOfCone({ ...seen, circleOfConfusion: 0 })).toThrow(OutOfRange);
    expect(() => farLimitOfCone({ ...seen, circleOfConfusion: 0 })).toThrow(/circle-of-confusion is 0/);
  });
});
