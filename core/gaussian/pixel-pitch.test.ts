import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { pixelPitch } from './pixel-pitch.ts';

describe('pixelPitch', () => {
  it('is 6 µm for 6000 pixels across 36 mm', () => {
    expect(pixelPitch({ sensorWidth: 36, pixelsAcross: 6000 })).toBe(0.006);
  });

  it('puts all pixels into the width', () => {
    expect(4320 * pixelPitch({ sensorWidth: 23.5, pixelsAcross: 4320 })).toEqual(
      closeTo(23.5, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('is the whole width for a single pixel', () => {
    expect(pixelPitch({ sensorWidth: 36, pixelsAcross: 1 })).toBe(36);
  });

  it.each([0, 0.5, 6000.5, -6000, NaN, Infinity])('refuses %s pixels', (pixelsAcross) => {
    expect(() => pixelPitch({ sensorWidth: 36, pixelsAcross })).toThrow(OutOfRange);
  });
});
