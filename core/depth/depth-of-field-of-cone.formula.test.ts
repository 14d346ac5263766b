import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';
import { depthOfFieldOfCone } from './depth-of-field-of-cone.formula.ts';
import { limitsOfCone } from './limits-of-cone.ts';

const seen = { circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: 1 };

describe('depthOfFieldOfCone', () => {
  it('is 0.8/(1 − 0.4²) mm with the pupil a millimetre in front of the subject, or behind it', () => {
    const expected = closeTo(0.8 / 0.84, { relative: 1e-14, because: 'a few roundings' });
    expect(depthOfFieldOfCone(seen)).toEqual(expected);
    expect(depthOfFieldOfCone({ ...seen, inverseEntrancePupilDistance: -1 })).toEqual(expected);
  });

  it('is the sum of its limits', () => {
    const { nearLimit, farLimit } = limitsOfCone(seen, 0.02);
    expect(depthOfFieldOfCone(seen)).toBe(nearLimit + farLimit);
  });

  it('is the close-up form for a telecentric chain, and never less', () => {
    expect(depthOfFieldOfCone({ ...seen, inverseEntrancePupilDistance: 0 })).toBe(depthOfFieldCloseUp(seen));
    expect(depthOfFieldOfCone({ ...seen, inverseEntrancePupilDistance: 0.1 })).toBeGreaterThan(0.8);
  });

  it('is infinite where a limit is, on either side', () => {
    expect(depthOfFieldOfCone({ ...seen, inverseEntrancePupilDistance: 3 })).toBe(Infinity);
    expect(depthOfFieldOfCone({ ...seen, inverseEntrancePupilDistance: -3 })).toBe(Infinity);
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => depthOfFieldOfCone({ ...seen, magnification: 0 })).toThrow(OutOfRange);
    expect(() => depthOfFieldOfCone({ ...seen, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
