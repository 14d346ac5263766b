import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { apertureValue, timeValue } from './stops.ts';
import { exposureValue } from './exposure-value.formula.ts';

/** f/8 and 1/60 s, exactly. */
const bright = { effectiveFNumber: 8, exposureTime: 1 / 64 };

describe('exposureValue', () => {
  it('is 12 for f/8 and 1/64 s, and 0 for f/1 and 1 s', () => {
    expect(exposureValue(bright)).toBe(12);
    expect(exposureValue({ effectiveFNumber: 1, exposureTime: 1 })).toBe(0);
  });

  it('stays where a stop of aperture is paid for with a stop of time', () => {
    expect(exposureValue({ effectiveFNumber: 8 * Math.SQRT2, exposureTime: 1 / 32 })).toEqual(
      closeTo(12, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is below zero in the dark', () => {
    expect(exposureValue({ effectiveFNumber: 1, exposureTime: 8 })).toBe(-3);
  });

  it('is the aperture value and the time value together', () => {
    expect(exposureValue({ effectiveFNumber: 5.6, exposureTime: 0.3 })).toEqual(
      closeTo(apertureValue(5.6) + timeValue(0.3), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses an endless time by name', () => {
    expect(() => exposureValue({ ...bright, exposureTime: Infinity })).toThrow(OutOfRange);
    expect(() => exposureValue({ ...bright, exposureTime: Infinity })).toThrow(/exposure-time is Infinity/);
  });
});
