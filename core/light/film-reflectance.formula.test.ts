import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { filmReflectance } from './film-reflectance.formula.ts';

const quarterWave = { refractiveIndex: 1.5, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0006 };

describe('filmReflectance', () => {
  it('is 14.8 % for a quarter wave of index 1.5', () => {
    const share = filmReflectance({ ...quarterWave, reflectance: 0.04 });
    expect(share).toEqual(closeTo(0.16 / 1.04 ** 2, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the same for a film half a wavelength thicker, measured inside', () => {
    const film = { ...quarterWave, reflectance: 0.04, filmThickness: 0.00007 };
    const thicker = filmReflectance({ ...film, filmThickness: 0.00007 + 0.0006 / 3 });
    expect(thicker).toEqual(closeTo(filmReflectance(film), { relative: 1e-12, because: 'a phase of several turns' }));
  });

  it('vanishes for a film much thinner than the wavelength: black', () => {
    expect(filmReflectance({ ...quarterWave, reflectance: 0.04, filmThickness: 1e-9 })).toBeLessThan(1e-10);
    expect(filmReflectance({ ...quarterWave, reflectance: 0.04, filmThickness: 0 })).toBe(0);
  });

  it.each([-0.1, 1, 2, NaN])('refuses a surface that sends back a share of %s', (reflectance) => {
    expect(() => filmReflectance({ ...quarterWave, reflectance })).toThrow(OutOfRange);
    expect(() => filmReflectance({ ...quarterWave, reflectance })).toThrow(/0 to below 1/);
  });

  it('refuses an index of 1, which is no film', () => {
    const air = { reflectance: 0, refractiveIndex: 1, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0005 };
    expect(() => filmReflectance(air)).toThrow(/refractive-index is 1/);
    expect(() => filmReflectance({ ...air, refractiveIndex: 1.0001 })).not.toThrow();
  });
});
