import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyIntensity } from './airy-pattern.ts';
import { airyProfile } from './airy-profile.ts';

const green = { imageRadius: 0.03, wavelength: 0.00055, effectiveFNumber: 16 };

describe('airyProfile', () => {
  it('samples evenly from the middle to the radius asked for', () => {
    const { radii, intensities } = airyProfile(green, 4);
    const rounding = { relative: 1e-15, because: 'one rounding' };
    expect(radii).toEqual([0, closeTo(0.01, rounding), closeTo(0.02, rounding), 0.03]);
    expect(intensities[0]).toBe(1);
    expect(intensities[3]).toBe(airyIntensity(green));
  });

  it('needs eight samples for every λ N_w to be drawn with straight lines within 1 % of the middle', () => {
    const one = { imageRadius: 8, wavelength: 1, effectiveFNumber: 1 };
    const { radii, intensities } = airyProfile(one, 65);
    for (let n = 1; n < radii.length; n++) {
      for (const part of [0.25, 0.5, 0.75]) {
        const [from, to] = [n - 1, n] as const;
        const imageRadius = (radii[from] as number) * (1 - part) + (radii[to] as number) * part;
        const drawn = (intensities[from] as number) * (1 - part) + (intensities[to] as number) * part;
        expect(drawn).toEqual(
          closeTo(airyIntensity({ ...one, imageRadius }), { absolute: 0.01, because: 'as documented' }),
        );
      }
    }
  });

  it('is one flat pair where the radius is zero', () => {
    expect(airyProfile({ ...green, imageRadius: 0 }, 2)).toEqual({ radii: [0, 0], intensities: [1, 1] });
  });

  it('refuses fewer than two samples, and a radius below zero by name', () => {
    for (const samples of [1, 2.5, NaN, 1e9]) expect(() => airyProfile(green, samples)).toThrow(/number of samples/);
    expect(() => airyProfile({ ...green, imageRadius: -1 }, 3)).toThrow(OutOfRange);
  });
});
