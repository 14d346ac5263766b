import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureTimeFromLuminance } from './exposure-time-from-luminance.formula.ts';

/** A lit landscape: 3200 cd/m², f/16, ISO 100. */
const sunny = { effectiveFNumber: 16, reflectedLightConstant: 12.5, luminance: 3200, iso: 100 };

describe('exposureTimeFromLuminance', () => {
  it('is one over the ISO at f/16 in the sun', () => {
    expect(exposureTimeFromLuminance(sunny)).toEqual(closeTo(1 / 100, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('doubles with half the light, and with a stop more of f-number', () => {
    expect(exposureTimeFromLuminance({ ...sunny, luminance: 1600 })).toEqual(
      closeTo(2 / 100, { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(exposureTimeFromLuminance({ ...sunny, effectiveFNumber: 16 * Math.SQRT2 })).toEqual(
      closeTo(2 / 100, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to nothing in boundless light', () => {
    expect(exposureTimeFromLuminance({ ...sunny, luminance: 1e30 })).toBeLessThan(1e-25);
  });

  it('refuses darkness by name', () => {
    expect(() => exposureTimeFromLuminance({ ...sunny, luminance: 0 })).toThrow(OutOfRange);
    expect(() => exposureTimeFromLuminance({ ...sunny, luminance: 0 })).toThrow(/luminance is 0/);
  });
});
