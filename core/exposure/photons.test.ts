import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { tableRange, towardsY } from '#core/light/cie-1931.ts';
import { daylight, equalEnergy } from '#core/light/illuminants.ts';
import { assumedPixel, midToneExposure, photonsPerLuxSecond, saturationExposure } from './photons.ts';

describe('photonsPerLuxSecond', () => {
  it('is a lumen second of 555 nm over the energy of a photon, for a square millimetre', () => {
    const photon = (6.62607015e-34 * 299792458) / 555.171e-9;
    const perSquareMetre = 1 / 683 / photon;
    expect(photonsPerLuxSecond).toEqual(
      closeTo(perSquareMetre / 1e6, { relative: 2e-5, because: 'the constant is taken to four figures' }),
    );
  });
});

describe('white light', () => {
  /** Photons between two wavelengths in nm for the lumens of the whole, over those of 555 nm: S λ summed by trapezia, over S ȳ. */
  const times = (illuminant: readonly number[], from: number, to: number) => {
    const { first, step } = tableRange;
    let photons = 0;
    let lumens = 0;
    illuminant.forEach((light, row) => {
      const wavelength = first + row * step;
      const weight = wavelength < from || wavelength > to ? 0 : wavelength === from || wavelength === to ? 0.5 : 1;
      photons += weight * light * wavelength;
      lumens += light * towardsY[row]!;
    });
    return photons / 555.171 / lumens;
  };
  const rounded = { absolute: 0.05, because: 'said to one decimal' };

  it('has as many more photons to the lumen as the README says, by where it is taken to end', () => {
    expect(times(daylight, 400, 700)).toEqual(closeTo(2.7, rounded));
    expect(times(daylight, 380, 780)).toEqual(closeTo(3.4, rounded));
    expect(times(equalEnergy, 400, 700)).toEqual(closeTo(2.8, rounded));
    expect(times(equalEnergy, 380, 780)).toEqual(closeTo(3.9, rounded));
  });
});

describe('exposures that an ISO stands for', () => {
  it('are 0.1 and 0.78 lx s at ISO 100', () => {
    expect(midToneExposure(100)).toBe(0.1);
    expect(saturationExposure(100)).toBe(0.78);
  });

  it('halve with each doubling', () => {
    expect(midToneExposure(800)).toBe(midToneExposure(400) / 2);
  });

  it('refuse an ISO of zero by name', () => {
    expect(() => midToneExposure(0)).toThrow(OutOfRange);
    expect(() => saturationExposure(0)).toThrow(/iso is 0/);
  });
});

describe('assumedPixel', () => {
  it('is a share, a noise and a well, each above zero', () => {
    expect(assumedPixel.quantumEfficiency).toBeLessThanOrEqual(1);
    for (const value of Object.values(assumedPixel)) expect(value).toBeGreaterThan(0);
  });
});
