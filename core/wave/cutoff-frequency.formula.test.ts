import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyDiameter, firstDarkRing } from './airy-diameter.formula.ts';
import { cutoffFrequency } from './cutoff-frequency.formula.ts';

const cyan = { wavelength: 0.0005, effectiveFNumber: 16 };

describe('cutoffFrequency', () => {
  it('is 125 line pairs per millimetre at 500 nm and an effective f/16', () => {
    expect(cutoffFrequency(cyan)).toEqual(closeTo(125, { relative: 1e-15, because: 'one rounding' }));
  });

  it('halves when the effective f-number doubles', () => {
    expect(cutoffFrequency({ ...cyan, effectiveFNumber: 32 })).toBe(cutoffFrequency(cyan) / 2);
  });

  it('puts 1.22 periods into the radius of the Airy disc whatever the light', () => {
    const periods = (airyDiameter(cyan) / 2) * cutoffFrequency(cyan);
    expect(periods).toEqual(closeTo(firstDarkRing, { relative: 1e-15, because: 'three roundings' }));
  });

  it('tends to zero as the hole closes', () => {
    expect(cutoffFrequency({ ...cyan, effectiveFNumber: 1e9 })).toBeLessThan(1e-5);
  });

  it('refuses an f-number of zero by name', () => {
    expect(() => cutoffFrequency({ ...cyan, effectiveFNumber: 0 })).toThrow(OutOfRange);
    expect(() => cutoffFrequency({ ...cyan, effectiveFNumber: 0 })).toThrow(/effective-f-number is 0/);
  });
});
