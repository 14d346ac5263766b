import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { stopsInHand } from './stops-in-hand.formula.ts';

const ample = { longestExposureTime: 0.01, neededExposureTime: 0.0025, frameFill: 1 };
const rounding = { absolute: 1e-14, because: 'a few roundings' };

describe('stopsInHand', () => {
  it('is 2 for a quarter of the time', () => {
    expect(stopsInHand(ample)).toEqual(closeTo(2, rounding));
  });

  it('is a stop less for twice the need, and two for half the width', () => {
    expect(stopsInHand({ ...ample, neededExposureTime: 0.005 })).toEqual(closeTo(1, rounding));
    expect(stopsInHand({ ...ample, frameFill: 0.5 })).toEqual(closeTo(0, rounding));
  });

  it('is 0 where all that is allowed is needed, and below where more is', () => {
    expect(stopsInHand({ ...ample, neededExposureTime: 0.01 })).toBe(0);
    expect(stopsInHand({ ...ample, neededExposureTime: 0.02 })).toEqual(closeTo(-1, rounding));
  });

  it('refuses a share of nothing by name', () => {
    expect(() => stopsInHand({ ...ample, frameFill: 0 })).toThrow(OutOfRange);
    expect(() => stopsInHand({ ...ample, frameFill: 0 })).toThrow(/frame-fill is 0/);
  });
});
