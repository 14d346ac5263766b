import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { electrons } from './electrons.formula.ts';
import { isoAtFullWell } from './iso-at-full-well.formula.ts';

/** A pixel of 6 µm, 1600 electrons to the square micrometre. */
const pixel = { quantumEfficiency: 0.5, pixelPitch: 0.006, fullWell: 57600 };

describe('isoAtFullWell', () => {
  it('is ISO 99.7 for 57600 electrons on 6 µm', () => {
    expect(isoAtFullWell(pixel)).toEqual(
      closeTo(99.7425, { relative: 1e-6, because: '4.092e9 · 0.5 · 36e-6 · 78 / 57600 worked out by hand' }),
    );
  });

  it('fills the pixel with 7.8 times the electrons of the mid-tone', () => {
    expect(7.8 * electrons({ ...pixel, iso: isoAtFullWell(pixel) })).toEqual(
      closeTo(57600, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is the same for any pitch if the well grows with the area', () => {
    expect(isoAtFullWell({ ...pixel, pixelPitch: 0.003, fullWell: 14400 })).toEqual(
      closeTo(isoAtFullWell(pixel), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to nothing for a pixel without bounds', () => {
    expect(isoAtFullWell({ ...pixel, fullWell: 1e30 })).toBeLessThan(1e-20);
  });

  it('refuses an empty well by name', () => {
    expect(() => isoAtFullWell({ ...pixel, fullWell: 0 })).toThrow(OutOfRange);
    expect(() => isoAtFullWell({ ...pixel, fullWell: 0 })).toThrow(/full-well is 0/);
  });
});
