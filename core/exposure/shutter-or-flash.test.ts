import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { shutterOrFlash } from './shutter-or-flash.ts';

const spider = { ambientExposureTime: 1 / 4, slowestExposureTime: 1 / 400, neededFlashPower: 0.15 };

describe('shutterOrFlash', () => {
  it('is a flash where daylight would smear, and the flash has the power', () => {
    expect(shutterOrFlash(spider)).toBe('flash');
    expect(shutterOrFlash({ ...spider, neededFlashPower: 1 })).toBe('flash');
  });

  it('is the light already there as soon as its time holds what moves', () => {
    expect(shutterOrFlash({ ...spider, ambientExposureTime: 1 / 400 })).toBe('ambient');
    expect(shutterOrFlash({ ...spider, slowestExposureTime: 10, neededFlashPower: 50 })).toBe('ambient');
  });

  it('is a higher ISO where neither serves', () => {
    expect(shutterOrFlash({ ...spider, neededFlashPower: 1.01 })).toBe('higher-iso');
  });

  it('refuses a time of nothing by name', () => {
    expect(() => shutterOrFlash({ ...spider, slowestExposureTime: 0 })).toThrow(OutOfRange);
    expect(() => shutterOrFlash({ ...spider, slowestExposureTime: 0 })).toThrow(/exposure-time is 0/);
  });
});
