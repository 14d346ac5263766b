import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { exposureValue } from './exposure-value.formula.ts';
import { lightValue } from './light-value.formula.ts';

/** Full sunlight. */
const sunny = { effectiveFNumber: 16, exposureTime: 1 / 128, iso: 100 };

describe('lightValue', () => {
  it('is 15 in the sun', () => {
    expect(lightValue(sunny)).toBe(15);
  });

  it('is the exposure value at ISO 100', () => {
    expect(lightValue({ effectiveFNumber: 4, exposureTime: 0.02, iso: 100 })).toEqual(
      closeTo(exposureValue({ effectiveFNumber: 4, exposureTime: 0.02 }), {
        relative: 1e-14,
        because: 'a few roundings',
      }),
    );
  });

  it('stays where ISO and time trade places', () => {
    expect(lightValue({ ...sunny, iso: 400, exposureTime: 1 / 512 })).toBe(15);
  });

  it('falls by one with every doubling of the ISO at the same settings, without end', () => {
    expect(lightValue({ ...sunny, iso: 100 * 2 ** 40 })).toBe(-25);
  });

  it('refuses an ISO of zero by name', () => {
    expect(() => lightValue({ ...sunny, iso: 0 })).toThrow(OutOfRange);
    expect(() => lightValue({ ...sunny, iso: 0 })).toThrow(/iso is 0/);
  });
});
