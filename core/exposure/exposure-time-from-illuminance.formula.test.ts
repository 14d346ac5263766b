import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureTimeFromLuminance } from './exposure-time-from-luminance.formula.ts';
import { agreedReflectance } from './metering-constants.ts';
import { exposureTimeFromIlluminance } from './exposure-time-from-illuminance.formula.ts';

/** Sunlight: 64000 lx, f/16, ISO 100. */
const sunny = { effectiveFNumber: 16, incidentLightConstant: 250, illuminance: 64000, iso: 100 };

describe('exposureTimeFromIlluminance', () => {
  it('is one over the ISO at f/16 in the sun', () => {
    expect(exposureTimeFromIlluminance(sunny)).toEqual(
      closeTo(1 / 100, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('halves with twice the ISO', () => {
    expect(exposureTimeFromIlluminance({ ...sunny, iso: 200 })).toEqual(
      closeTo(1 / 200, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('agrees with the other meter on a surface that sends back π K/C of the light', () => {
    const luminance = (64000 * agreedReflectance(12.5, 250)) / Math.PI;
    const pointed = exposureTimeFromLuminance({ ...sunny, reflectedLightConstant: 12.5, luminance });
    expect(exposureTimeFromIlluminance(sunny)).toEqual(
      closeTo(pointed, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses darkness by name', () => {
    expect(() => exposureTimeFromIlluminance({ ...sunny, illuminance: 0 })).toThrow(OutOfRange);
    expect(() => exposureTimeFromIlluminance({ ...sunny, illuminance: 0 })).toThrow(/illuminance is 0/);
  });
});
