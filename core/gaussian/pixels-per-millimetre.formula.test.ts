import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { pixelsPerMillimetre } from './pixels-per-millimetre.formula.ts';

describe('pixelsPerMillimetre', () => {
  it('is 200 at life size on pixels of 5 µm', () => {
    expect(pixelsPerMillimetre({ magnification: 1, pixelPitch: 0.005 })).toBe(200);
  });

  it('gains as much from half the pitch as from twice the magnification', () => {
    const stronger = pixelsPerMillimetre({ magnification: 2, pixelPitch: 0.006 });
    expect(pixelsPerMillimetre({ magnification: 1, pixelPitch: 0.003 })).toBe(stronger);
  });

  it('is one pixel to a millimetre where the pitch is the magnification', () => {
    expect(pixelsPerMillimetre({ magnification: 0.006, pixelPitch: 0.006 })).toBe(1);
  });

  it('refuses a pitch of zero by name', () => {
    expect(() => pixelsPerMillimetre({ magnification: 1, pixelPitch: 0 })).toThrow(OutOfRange);
    expect(() => pixelsPerMillimetre({ magnification: 1, pixelPitch: 0 })).toThrow(/pixel-pitch is 0/);
  });
});
