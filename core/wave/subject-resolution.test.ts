import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { subjectResolution } from './subject-resolution.ts';

const lifeSize = { wavelength: 0.00055, effectiveFNumber: 16, magnification: 1, pixelPitch: 0.004 };

describe('subjectResolution', () => {
  it('is 10.7 µm at life size and an effective f/16, by the optics', () => {
    const { finest, limitedBy } = subjectResolution(lifeSize);
    expect(finest).toEqual(closeTo(0.0107, { absolute: 5e-5, because: 'three figures' }));
    expect(limitedBy).toBe('optics');
  });

  it('is two pixels once the lens is open', () => {
    expect(subjectResolution({ ...lifeSize, effectiveFNumber: 5.6 })).toMatchObject({
      finest: 0.008,
      limitedBy: 'pixels',
    });
  });

  it('goes as one over the magnification, both limits alike', () => {
    const [one, two] = [1, 2].map((magnification) => subjectResolution({ ...lifeSize, magnification }));
    expect(two?.optics).toBe((one?.optics ?? NaN) / 2);
    expect(two?.pixels).toBe((one?.pixels ?? NaN) / 2);
  });

  it('is left to the optics alone as pixels shrink', () => {
    const { optics, finest } = subjectResolution({ ...lifeSize, pixelPitch: 1e-9 });
    expect(finest).toBe(optics);
  });

  it('refuses a magnification of zero and a pitch below zero by name', () => {
    expect(() => subjectResolution({ ...lifeSize, magnification: 0 })).toThrow(OutOfRange);
    expect(() => subjectResolution({ ...lifeSize, pixelPitch: -1 })).toThrow(/pixel-pitch is -1/);
  });
});
