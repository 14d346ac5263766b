import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { circleOfConfusionByPixels } from './circle-of-confusion-by-pixels.formula.ts';

describe('circleOfConfusionByPixels', () => {
  it('is 12 µm for pixels of 6 µm', () => {
    expect(circleOfConfusionByPixels({ pixelPitch: 0.006 })).toBe(0.012);
  });

  it('doubles with the pitch', () => {
    const fine = circleOfConfusionByPixels({ pixelPitch: 0.0037 });
    expect(circleOfConfusionByPixels({ pixelPitch: 0.0074 })).toBe(2 * fine);
  });

  it('vanishes with the pitch', () => {
    expect(circleOfConfusionByPixels({ pixelPitch: 1e-12 })).toBe(2e-12);
  });

  it('refuses a pitch of zero by name', () => {
    expect(() => circleOfConfusionByPixels({ pixelPitch: 0 })).toThrow(OutOfRange);
    expect(() => circleOfConfusionByPixels({ pixelPitch: 0 })).toThrow(/pixel-pitch is 0/);
  });
});
