import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { meteredLuminance } from './metered-luminance.formula.ts';
import { lensFactor, luminousExposure } from './luminous-exposure.ts';

const surface = { luminance: 3200, effectiveFNumber: 16, exposureTime: 0.01 };

describe('luminousExposure', () => {
  it('is 0.0814 lx s for 3200 cd/m² at f/16 and 1/100 s', () => {
    expect(luminousExposure(surface)).toEqual(
      closeTo(0.08144685, { relative: 1e-7, because: '0.65157483 · 3200 · 0.01/256' }),
    );
  });

  it('is a quarter at life size for the same marked f-number', () => {
    expect(luminousExposure({ ...surface, effectiveFNumber: 32 })).toBe(luminousExposure(surface) / 4);
  });

  it('is q K/S for whatever a meter is pointed at', () => {
    const settings = { effectiveFNumber: 11, exposureTime: 0.3, iso: 400 };
    const luminance = meteredLuminance({ ...settings, reflectedLightConstant: 12.5 });
    expect(luminousExposure({ ...settings, luminance })).toEqual(
      closeTo((lensFactor * 12.5) / 400, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses a dark surface by name', () => {
    expect(() => luminousExposure({ ...surface, luminance: 0 })).toThrow(OutOfRange);
    expect(() => luminousExposure({ ...surface, luminance: 0 })).toThrow(/luminance is 0/);
  });
});
