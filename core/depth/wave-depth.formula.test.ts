import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { waveDepth } from './wave-depth.formula.ts';

describe('waveDepth', () => {
  it('is 55 µm for green light and an aperture of 0.1', () => {
    expect(waveDepth({ wavelength: 0.00055, numericalAperture: 0.1 })).toEqual(
      closeTo(0.055, { relative: 1e-15, because: 'two roundings' }),
    );
  });

  it('falls to a quarter when the aperture doubles', () => {
    const narrow = waveDepth({ wavelength: 0.0005, numericalAperture: 0.2 });
    expect(waveDepth({ wavelength: 0.0005, numericalAperture: 0.4 })).toEqual(
      closeTo(narrow / 4, { relative: 1e-15, because: 'a few roundings' }),
    );
  });

  it('tends to one wavelength as the cone opens all the way', () => {
    expect(waveDepth({ wavelength: 0.0005, numericalAperture: 1 - 1e-9 })).toEqual(
      closeTo(0.0005, { relative: 3e-9, because: 'the limit is approached as twice what is missing to 1' }),
    );
  });

  it.each([0, 1, 1.4, NaN])('refuses an aperture of %s by name', (numericalAperture) => {
    expect(() => waveDepth({ wavelength: 0.0005, numericalAperture })).toThrow(OutOfRange);
    expect(() => waveDepth({ wavelength: 0.0005, numericalAperture })).toThrow(/numerical-aperture is/);
  });
});
