import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ambientUnderexposure } from './ambient-underexposure.formula.ts';

describe('ambientUnderexposure', () => {
  it('is three stops for an eighth of the time, none for all of it, and below zero for more', () => {
    expect(ambientUnderexposure({ ambientExposureTime: 0.08, shutterExposureTime: 0.01 })).toBe(3);
    expect(ambientUnderexposure({ ambientExposureTime: 0.08, shutterExposureTime: 0.08 })).toBe(0);
    expect(ambientUnderexposure({ ambientExposureTime: 0.01, shutterExposureTime: 0.02 })).toBe(-1);
  });

  it('grows by one stop with every halving of the shutter time', () => {
    const at = (shutterExposureTime: number) => ambientUnderexposure({ ambientExposureTime: 0.3, shutterExposureTime });
    expect(at(0.005) - at(0.01)).toEqual(closeTo(1, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('refuses a time of zero by name', () => {
    expect(() => ambientUnderexposure({ ambientExposureTime: 0, shutterExposureTime: 1 })).toThrow(
      /ambient.exposure-time is 0/,
    );
    expect(() => ambientUnderexposure({ ambientExposureTime: 1, shutterExposureTime: 0 })).toThrow(OutOfRange);
  });
});
