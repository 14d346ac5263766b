import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyIntensity, encircledEnergy, opticalRadius } from './airy-pattern.ts';
import { airyRings } from './airy-rings.ts';

const green = { wavelength: 0.00055, effectiveFNumber: 16 };
const firstRing = airyRings(green, 1).dark[0] as number;

describe('airyIntensity', () => {
  it('is half of the middle’s at 0.5145 λ N_w', () => {
    const half = airyIntensity({ ...green, imageRadius: 0.514497 * 0.00055 * 16 });
    expect(half).toEqual(closeTo(0.5, { absolute: 2e-6, because: 'radius given to six figures' }));
  });

  it('is the same at radii in proportion to λ N_w', () => {
    const near = airyIntensity({ ...green, imageRadius: 0.007 });
    const scaled = airyIntensity({ imageRadius: 0.014, wavelength: 0.00055, effectiveFNumber: 32 });
    expect(scaled).toEqual(closeTo(near, { relative: 1e-14, because: 'rounding of the optical radius' }));
  });

  it('is whole in the middle and leaves it along 1 − v²/4', () => {
    expect(airyIntensity({ ...green, imageRadius: 0 })).toBe(1);
    const v = opticalRadius({ ...green, imageRadius: 1e-6 });
    const drop = 1 - airyIntensity({ ...green, imageRadius: 1e-6 });
    expect(drop).toEqual(closeTo(v ** 2 / 4, { relative: 1e-6, because: 'the next term is smaller by v²' }));
  });

  it('refuses a radius below zero, and one beside which λ N_w vanishes, by name', () => {
    expect(() => airyIntensity({ ...green, imageRadius: -1 })).toThrow(OutOfRange);
    expect(() => airyIntensity({ ...green, imageRadius: -1 })).toThrow(/image-radius is -1/);
    expect(() => airyIntensity({ imageRadius: 1e300, wavelength: 1e-20, effectiveFNumber: 1 })).toThrow(OutOfRange);
    expect(() => airyIntensity({ imageRadius: 0, wavelength: 1e-200, effectiveFNumber: 1e-200 })).toThrow(OutOfRange);
  });
});

describe('encircledEnergy', () => {
  it('is 83.8 % within the first dark ring', () => {
    const share = encircledEnergy({ ...green, imageRadius: firstRing });
    expect(share).toEqual(closeTo(0.838, { absolute: 5e-4, because: 'three figures' }));
  });

  it('never falls as the circle grows', () => {
    const shares = Array.from({ length: 400 }, (_, n) => encircledEnergy({ ...green, imageRadius: n * 2e-4 }));
    shares.forEach((share, n) => expect(share).toBeGreaterThanOrEqual(shares[n - 1] ?? 0));
  });

  it('starts at nothing and tends to everything', () => {
    expect(encircledEnergy({ ...green, imageRadius: 0 })).toBe(0);
    const far = encircledEnergy({ ...green, imageRadius: 100 });
    expect(1 - far).toBeGreaterThan(0);
    expect(far).toEqual(closeTo(1, { absolute: 2e-5, because: 'what is left outside is about 2/(π v), v = 35700' }));
  });

  it('refuses a wavelength that is no number by name', () => {
    expect(() => encircledEnergy({ ...green, imageRadius: 1, wavelength: NaN })).toThrow(/wavelength is NaN/);
  });
});
