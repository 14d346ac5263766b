import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { movementUnderFlash, shareBehindCurtain, shutterTimeWithFlash } from './shutter-with-flash.ts';

describe('shutterTimeWithFlash', () => {
  it('is the time wanted, but no shorter than the sync limit', () => {
    expect(shutterTimeWithFlash({ exposureTime: 0.02, syncSpeed: 0.005 })).toBe(0.02);
    expect(shutterTimeWithFlash({ exposureTime: 0.001, syncSpeed: 0.005 })).toBe(0.005);
  });

  it('refuses a sync limit of zero by name', () => {
    expect(() => shutterTimeWithFlash({ exposureTime: 0.02, syncSpeed: 0 })).toThrow(/sync-speed is 0/);
  });
});

describe('shareBehindCurtain', () => {
  it('is four fifths at a fifth of the sync time', () => {
    expect(shareBehindCurtain({ exposureTime: 0.001, syncSpeed: 0.005 })).toBe(0.8);
  });

  it('is nothing at the sync limit and at longer times', () => {
    expect(shareBehindCurtain({ exposureTime: 0.005, syncSpeed: 0.005 })).toBe(0);
    expect(shareBehindCurtain({ exposureTime: 1, syncSpeed: 0.005 })).toBe(0);
  });

  it('refuses a time of zero by name', () => {
    expect(() => shareBehindCurtain({ exposureTime: 0, syncSpeed: 0.005 })).toThrow(/exposure-time is 0/);
    expect(() => shareBehindCurtain({ exposureTime: 0.01, syncSpeed: 0 })).toThrow(OutOfRange);
  });
});

describe('movementUnderFlash', () => {
  const hoverfly = {
    magnification: 0.5,
    subjectSpeed: 1000,
    exposureTime: 0.005,
    flashDuration: 0.0001,
    ambientShare: 0.1,
  };

  it('gives the flash its duration for a shutter, and daylight the shutter', () => {
    expect(movementUnderFlash(hoverfly)).toEqual({ inFlash: 0.05, inAmbient: 2.5, ambientShare: 0.1 });
  });

  it('takes pitch darkness for what it is', () => {
    expect(movementUnderFlash({ ...hoverfly, ambientShare: 0 }).ambientShare).toBe(0);
  });

  it('refuses a share outside 0 to 1 and a flash without duration, by name', () => {
    expect(() => movementUnderFlash({ ...hoverfly, ambientShare: 1.1 })).toThrow(/ambient-share is 1.1/);
    expect(() => movementUnderFlash({ ...hoverfly, ambientShare: -0.1 })).toThrow(/ambient-share is -0.1/);
    expect(() => movementUnderFlash({ ...hoverfly, flashDuration: 0 })).toThrow(/flash-duration is 0/);
  });
});
