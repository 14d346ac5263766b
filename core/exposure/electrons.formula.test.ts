import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { photonsPerLuxSecond } from './photons.ts';
import { electrons } from './electrons.formula.ts';

/** A pixel of 6 µm that counts every second photon. */
const pixel = { quantumEfficiency: 0.5, pixelPitch: 0.006, iso: 100 };

describe('electrons', () => {
  it('is 7365 for a 6 µm pixel at ISO 100', () => {
    expect(electrons(pixel)).toEqual(
      closeTo(7365.6, {
        relative: 1e-12,
        because: '4.092e9 · 0.5 · 36e-6 · 0.1 worked out by hand',
      }),
    );
  });

  it('is a quarter for half the pitch, and half for twice the ISO', () => {
    expect(electrons({ ...pixel, pixelPitch: 0.003 })).toEqual(
      closeTo(electrons(pixel) / 4, { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(electrons({ ...pixel, iso: 200 })).toEqual(
      closeTo(electrons(pixel) / 2, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is at most as many as there are photons', () => {
    expect(electrons({ ...pixel, quantumEfficiency: 1 })).toEqual(
      closeTo(photonsPerLuxSecond * 0.006 ** 2 * 0.1, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses more electrons than photons by name', () => {
    expect(() => electrons({ ...pixel, quantumEfficiency: 1.5 })).toThrow(OutOfRange);
    expect(() => electrons({ ...pixel, quantumEfficiency: 1.5 })).toThrow(/quantum-efficiency is 1.5/);
  });
});
