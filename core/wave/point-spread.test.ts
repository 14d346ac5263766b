import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyProfile } from './airy-profile.ts';
import { pointSpreadProfile, strehlRatio } from './point-spread.ts';

const green = { imageRadius: 0.1, wavelength: 0.00055, effectiveFNumber: 16 };
const perfect = { defocusAberration: 0, sphericalAberration: 0 };
const accuracy = { absolute: 1e-7, because: 'the accuracy that the docstring states' } as const;

describe('pointSpreadProfile', () => {
  it('is the Airy pattern for a perfect pupil', () => {
    const ours = pointSpreadProfile({ ...green, ...perfect }, 300);
    const airy = airyProfile(green, 300);
    expect(ours.radii).toEqual(airy.radii);
    ours.intensities.forEach((intensity, n) =>
      expect(intensity).toEqual(closeTo(airy.intensities[n] as number, accuracy)),
    );
  });

  it('depends on radius, wavelength and f-number by r/(λ N_w) alone', () => {
    const pupil = { defocusAberration: 2, sphericalAberration: -0.5 };
    const here = pointSpreadProfile({ ...green, ...pupil }, 50).intensities;
    const there = pointSpreadProfile(
      { imageRadius: 0.2, wavelength: 0.0011, effectiveFNumber: 16, ...pupil },
      50,
    ).intensities;
    there.forEach((intensity, n) =>
      expect(intensity).toEqual(closeTo(here[n] as number, { absolute: 1e-12, because: 'rounding' })),
    );
  });

  it('is the same on either side of focus without spherical aberration, and not with it', () => {
    const at = (defocusAberration: number, sphericalAberration: number) =>
      pointSpreadProfile({ ...green, defocusAberration, sphericalAberration }, 20).intensities;
    at(1.5, 0).forEach((one, n) =>
      expect(at(-1.5, 0)[n]).toEqual(closeTo(one, { absolute: 1e-15, because: 'rounding' })),
    );
    expect(at(-1, 1)[0]).toBeGreaterThan(10 * (at(1, 1)[0] as number));
  });

  it('tends to an even disc as wide as the geometric blur far from focus', () => {
    // With λ N_w = 1 the blur diameter is 8 W₀₂₀: 800 here. All the light evenly over it is (4/(π b))² of the perfect middle.
    const far = { defocusAberration: 100, sphericalAberration: 0, wavelength: 1, effectiveFNumber: 1 };
    const { intensities } = pointSpreadProfile({ ...far, imageRadius: 800 }, 8001);
    const mean = (from: number, to: number) => {
      const ring = intensities.slice(from, to);
      return ring.reduce((sum, intensity) => sum + intensity, 0) / ring.length;
    };
    const level = (4 / (Math.PI * 800)) ** 2;
    expect(mean(1000, 3000)).toEqual(closeTo(level, { relative: 0.02, because: 'ripples left over after averaging' }));
    expect(mean(5000, 8000)).toBeLessThan(0.01 * level);
  });

  it('refuses an aberration, a radius or a count out of range', () => {
    expect(() => pointSpreadProfile({ ...green, ...perfect, defocusAberration: 300 }, 10)).toThrow(
      /defocus-aberration is 300/,
    );
    expect(() => pointSpreadProfile({ ...green, ...perfect, imageRadius: 1000 }, 10)).toThrow(
      /image-radius is 1000; accepted: at most 31830 times/,
    );
    expect(() => pointSpreadProfile({ ...green, ...perfect, wavelength: 0 }, 10)).toThrow(OutOfRange);
    expect(() => pointSpreadProfile({ ...green, ...perfect }, 1)).toThrow(/number of samples/);
  });
});

describe('strehlRatio', () => {
  it('is 0.81 a quarter wave out of focus', () => {
    const quarter = strehlRatio({ defocusAberration: 0.25, sphericalAberration: 0 });
    expect(quarter).toEqual(closeTo(8 / Math.PI ** 2, accuracy));
  });

  it('loses fifteen times less by spherical aberration at best focus than by as much defocus, while both are small', () => {
    // Variance of the phase: W₀₄₀²/180 at best focus, W₀₂₀²/12 for defocus alone.
    const spherical = 1 - strehlRatio({ defocusAberration: -0.1, sphericalAberration: 0.1 });
    const defocus = 1 - strehlRatio({ defocusAberration: 0.1, sphericalAberration: 0 });
    expect(defocus / spherical).toEqual(
      closeTo(15, { relative: 0.03, because: 'the loss goes with the variance to first order' }),
    );
  });

  it('is whole for a perfect pupil and refuses what is none', () => {
    expect(strehlRatio(perfect)).toEqual(closeTo(1, accuracy));
    expect(() => strehlRatio({ defocusAberration: Infinity, sphericalAberration: 0 })).toThrow(OutOfRange);
  });
});
