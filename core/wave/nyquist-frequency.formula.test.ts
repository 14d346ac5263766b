import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { nyquistFrequency } from './nyquist-frequency.formula.ts';

describe('nyquistFrequency', () => {
  it('is 125 line pairs per millimetre for pixels of 4 µm', () => {
    expect(nyquistFrequency({ pixelPitch: 0.004 })).toBe(125);
  });

  it('doubles when the pitch halves', () => {
    expect(nyquistFrequency({ pixelPitch: 0.002 })).toBe(2 * nyquistFrequency({ pixelPitch: 0.004 }));
  });

  it('tends to zero as the pixels grow', () => {
    expect(nyquistFrequency({ pixelPitch: 1e6 })).toBe(5e-7);
  });

  it('refuses a pitch of zero by name', () => {
    expect(() => nyquistFrequency({ pixelPitch: 0 })).toThrow(OutOfRange);
    expect(() => nyquistFrequency({ pixelPitch: 0 })).toThrow(/pixel-pitch is 0/);
  });
});
