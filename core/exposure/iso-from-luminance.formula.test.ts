import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { isoFromLuminance } from './iso-from-luminance.formula.ts';

/** f/16 and 1/100 s in the sun. */
const wanted = { effectiveFNumber: 16, reflectedLightConstant: 12.5, luminance: 3200, exposureTime: 0.01 };

describe('isoFromLuminance', () => {
  it('is 100 for f/16 and 1/100 s in the sun', () => {
    expect(isoFromLuminance(wanted)).toEqual(closeTo(100, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is sixteen times as high at life size for the same marked f-number and a quarter of the time', () => {
    expect(isoFromLuminance({ ...wanted, effectiveFNumber: 32, exposureTime: 0.0025 })).toEqual(
      closeTo(1600, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to nothing as the time grows', () => {
    expect(isoFromLuminance({ ...wanted, exposureTime: 1e30 })).toBeLessThan(1e-25);
  });

  it('refuses an f-number below zero by name', () => {
    expect(() => isoFromLuminance({ ...wanted, effectiveFNumber: -16 })).toThrow(OutOfRange);
    expect(() => isoFromLuminance({ ...wanted, effectiveFNumber: -16 })).toThrow(/effective-f-number is -16/);
  });
});
