import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfFieldCloseUp } from './depth-of-field-close-up.formula.ts';

const lifeSize = { circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1 };

describe('depthOfFieldCloseUp', () => {
  it('is 0.8 mm at life size where f/10 works like f/20', () => {
    expect(depthOfFieldCloseUp(lifeSize)).toBe(0.8);
  });

  it('doubles with the effective f-number, and with the circle of confusion', () => {
    expect(depthOfFieldCloseUp({ ...lifeSize, effectiveFNumber: 40 })).toBe(1.6);
    expect(depthOfFieldCloseUp({ ...lifeSize, circleOfConfusion: 0.04 })).toBe(1.6);
  });

  it('falls as 1/m² where the same cone reaches the sensor', () => {
    expect(depthOfFieldCloseUp({ ...lifeSize, magnification: 2 })).toBe(0.2);
  });

  it('vanishes with the blur allowed', () => {
    expect(depthOfFieldCloseUp({ ...lifeSize, circleOfConfusion: 1e-15 })).toEqual(
      closeTo(0, { absolute: 1e-13, because: '40 times the blur' }),
    );
  });

  it('refuses a magnification of zero by name', () => {
    expect(() => depthOfFieldCloseUp({ ...lifeSize, magnification: 0 })).toThrow(OutOfRange);
    expect(() => depthOfFieldCloseUp({ ...lifeSize, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
