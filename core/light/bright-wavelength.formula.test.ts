import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { brightWavelength } from './bright-wavelength.formula.ts';
import { filmReflectance } from './film-reflectance.formula.ts';

const film = { refractiveIndex: 1.33, filmThickness: 0.0001, refractionAngle: 0, interferenceOrder: 1 };

describe('brightWavelength', () => {
  it('is 532 nm for 100 nm of soapy water', () => {
    expect(brightWavelength(film)).toEqual(closeTo(0.000532, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is a third for the second order and a fifth for the third', () => {
    const second = brightWavelength({ ...film, interferenceOrder: 2 });
    const third = brightWavelength({ ...film, interferenceOrder: 3 });
    expect([second, third]).toEqual([
      closeTo(0.000532 / 3, { relative: 1e-14, because: 'a few roundings' }),
      closeTo(0.000532 / 5, { relative: 1e-14, because: 'a few roundings' }),
    ]);
  });

  it('shifts towards blue for a film seen more flatly', () => {
    expect(brightWavelength({ ...film, refractionAngle: Math.PI / 3 })).toEqual(
      closeTo(0.000266, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is where the film sends back the most', () => {
    const thick = { ...film, filmThickness: 0.0003, refractionAngle: 0.4, interferenceOrder: 2 };
    const wavelength = brightWavelength(thick);
    const shareAt = (factor: number) =>
      filmReflectance({ ...thick, reflectance: 0.02, wavelength: wavelength * factor });
    expect(shareAt(1)).toBeGreaterThan(Math.max(shareAt(0.999), shareAt(1.001)));
  });

  it('refuses an order below the first', () => {
    expect(() => brightWavelength({ ...film, interferenceOrder: 0 })).toThrow(/interference-order is 0/);
    expect(() => brightWavelength({ ...film, refractionAngle: Math.PI / 2 })).toThrow(OutOfRange);
  });

  it('refuses an index of 1, which is no film', () => {
    const air = { refractiveIndex: 1, filmThickness: 0.0001, refractionAngle: 0, interferenceOrder: 1 };
    expect(() => brightWavelength(air)).toThrow(/refractive-index is 1/);
    expect(() => brightWavelength({ ...air, refractiveIndex: 1.0001 })).not.toThrow();
  });
});
