import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { assumedPixel, midToneExposure, photonsPerLuxSecond, saturationExposure } from './photons.ts';

describe('photonsPerLuxSecond', () => {
  it('is a lumen second of 555 nm over the energy of a photon, for a square millimetre', () => {
    const photon = (6.62607015e-34 * 299792458) / 555.171e-9;
    const perSquareMetre = 1 / 683 / photon;
    expect(photonsPerLuxSecond).toEqual(
      closeTo(perSquareMetre / 1e6, { relative: 1e-6, because: '540 THz is 555.171 nm in vacuum, to six figures' }),
    );
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
