import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { nyquistFrequency } from './nyquist-frequency.formula.ts';
import { pixelTransfer } from './pixel-transfer.ts';

const pixelPitch = 0.004;

describe('pixelTransfer', () => {
  it('is 2/π at the Nyquist frequency', () => {
    const atNyquist = pixelTransfer({ pixelPitch, spatialFrequency: nyquistFrequency({ pixelPitch }) });
    expect(atNyquist).toEqual(closeTo(2 / Math.PI, { relative: 1e-15, because: 'rounding' }));
  });

  it('is the mean of the pattern over a pixel', () => {
    const spatialFrequency = 90;
    const places = Array.from({ length: 1000 }, (_, k) => ((k + 0.5) / 1000 - 0.5) * pixelPitch);
    const mean = places.reduce((sum, x) => sum + Math.cos(2 * Math.PI * spatialFrequency * x), 0) / places.length;
    const ours = pixelTransfer({ pixelPitch, spatialFrequency });
    expect(ours).toEqual(closeTo(mean, { relative: 1e-6, because: 'midpoint rule of 1000 points' }));
  });

  it('loses a pattern as wide as the pixel and reverses the next finer ones', () => {
    expect(Math.abs(pixelTransfer({ pixelPitch, spatialFrequency: 250 }))).toBeLessThan(1e-15);
    expect(pixelTransfer({ pixelPitch, spatialFrequency: 375 })).toBeLessThan(-0.2);
  });

  it('is whole at zero frequency', () => {
    expect(pixelTransfer({ pixelPitch, spatialFrequency: 0 })).toBe(1);
  });

  it('refuses a pitch of zero and a product without bounds by name', () => {
    expect(() => pixelTransfer({ pixelPitch: 0, spatialFrequency: 1 })).toThrow(/pixel-pitch is 0/);
    expect(() => pixelTransfer({ pixelPitch: 1e200, spatialFrequency: 1e200 })).toThrow(OutOfRange);
  });
});
