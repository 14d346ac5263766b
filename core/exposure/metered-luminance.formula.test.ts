import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureTimeFromLuminance } from './exposure-time-from-luminance.formula.ts';
import { meteredLuminance } from './metered-luminance.formula.ts';

/** What a meter asks for in the sun. */
const asked = { effectiveFNumber: 16, reflectedLightConstant: 12.5, exposureTime: 0.01, iso: 100 };

describe('meteredLuminance', () => {
  it('is 3200 cd/m² where a meter asks for f/16 and 1/100 s at ISO 100', () => {
    expect(meteredLuminance(asked)).toEqual(closeTo(3200, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('undoes the exposure time', () => {
    const luminance = meteredLuminance({ ...asked, exposureTime: 0.3 });
    expect(exposureTimeFromLuminance({ ...asked, luminance })).toEqual(
      closeTo(0.3, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to nothing as the time grows', () => {
    expect(meteredLuminance({ ...asked, exposureTime: 1e30 })).toBeLessThan(1e-25);
  });

  it('refuses a time of zero by name', () => {
    expect(() => meteredLuminance({ ...asked, exposureTime: 0 })).toThrow(OutOfRange);
    expect(() => meteredLuminance({ ...asked, exposureTime: 0 })).toThrow(/exposure-time is 0/);
  });
});
