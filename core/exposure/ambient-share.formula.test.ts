import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { ambientShare } from './ambient-share.formula.ts';

/** Daylight three stops below the flash. */
const below = { ambientUnderexposure: 3 };

describe('ambientShare', () => {
  it('is a ninth where daylight falls short by three stops', () => {
    expect(ambientShare(below)).toEqual(closeTo(1 / 9, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is half where daylight alone would do', () => {
    expect(ambientShare({ ambientUnderexposure: 0 })).toBe(0.5);
  });

  it('leaves the flash what it takes from daylight when signs change', () => {
    expect(ambientShare(below) + ambientShare({ ambientUnderexposure: -3 })).toEqual(
      closeTo(1, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to nothing as daylight fails', () => {
    expect(ambientShare({ ambientUnderexposure: 60 })).toBeLessThan(1e-18);
  });

  it('refuses an infinite shortfall by name', () => {
    expect(() => ambientShare({ ambientUnderexposure: Infinity })).toThrow(OutOfRange);
    expect(() => ambientShare({ ambientUnderexposure: Infinity })).toThrow(/ambient-underexposure is Infinity/);
  });
});
