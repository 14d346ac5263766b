import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { encircledEnergy } from './airy-pattern.ts';
import { energyProfile } from './energy-profile.ts';

const green = { imageRadius: 0.1, wavelength: 0.00055, effectiveFNumber: 16 };
const perfect = { defocusAberration: 0, sphericalAberration: 0 };
const accuracy = { absolute: 1e-6, because: 'the accuracy that the docstring states' } as const;

describe('energyProfile', () => {
  it('is the closed form for a perfect pupil', () => {
    const { radii, shares } = energyProfile({ ...green, ...perfect }, 40);
    radii.forEach((imageRadius, n) => {
      expect(shares[n]).toEqual(closeTo(encircledEnergy({ ...green, imageRadius }), accuracy));
    });
  });

  it('never falls as the circle grows, however bad the image', () => {
    const { shares } = energyProfile({ ...green, defocusAberration: 4, sphericalAberration: -3 }, 200);
    shares.forEach((share, n) => expect(share).toBeGreaterThanOrEqual((shares[n - 1] ?? 0) - 1e-6));
    expect(shares[0]).toBe(0);
  });

  it('tends to the share of the blur disc’s area far out of focus', () => {
    // With λ N_w = 1 the blur disc of 50 waves has a radius of 200.
    const far = { defocusAberration: 50, sphericalAberration: 0, wavelength: 1, effectiveFNumber: 1 };
    const { shares } = energyProfile({ ...far, imageRadius: 200 }, 5);
    const ripple = { absolute: 0.01, because: 'ripples of the pattern about the even disc' };
    expect(shares.slice(1, 4)).toEqual([1, 2, 3].map((quarter) => closeTo((quarter / 4) ** 2, ripple)));
  });

  it('refuses a radius and an aberration out of range by name', () => {
    expect(() => energyProfile({ ...green, ...perfect, imageRadius: 100 }, 10)).toThrow(/image-radius is 100/);
    expect(() => energyProfile({ ...green, ...perfect, sphericalAberration: 50 }, 10)).toThrow(OutOfRange);
    expect(() => energyProfile({ ...green, ...perfect }, 0)).toThrow(/number of samples/);
  });
});
