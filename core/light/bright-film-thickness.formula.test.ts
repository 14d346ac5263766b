import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { brightFilmThickness } from './bright-film-thickness.formula.ts';
import { brightWavelength } from './bright-wavelength.formula.ts';

const red = { refractiveIndex: 1.333, wavelength: 0.00065, refractionAngle: 0, interferenceOrder: 1 };

describe('brightFilmThickness', () => {
  it('is 122 nm for red light of 650 nm on a soap bubble', () => {
    const thickness = brightFilmThickness(red);
    expect(thickness).toEqual(closeTo(0.000122, { absolute: 5e-7, because: 'three figures' }));
  });

  it('grows by the same step from each bright band to the next', () => {
    const [first, second, third] = [1, 2, 3].map((interferenceOrder) =>
      brightFilmThickness({ ...red, interferenceOrder }),
    );
    expect(third! - second!).toEqual(closeTo(second! - first!, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('gives back the wavelength that is brightest there', () => {
    const given = { ...red, interferenceOrder: 3, refractionAngle: 0.3 };
    const back = brightWavelength({ ...given, filmThickness: brightFilmThickness(given) });
    expect(back).toEqual(closeTo(0.00065, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('tends to a quarter of the wavelength as the index tends to 1', () => {
    const thickness = brightFilmThickness({ ...red, refractiveIndex: 1 + 1e-12 });
    expect(thickness).toEqual(closeTo(0.00065 / 4, { relative: 1e-11, because: 'the index is 1e-12 above 1' }));
  });

  it('refuses a wavelength of 0 by name', () => {
    expect(() => brightFilmThickness({ ...red, wavelength: 0 })).toThrow(OutOfRange);
    expect(() => brightFilmThickness({ ...red, wavelength: 0 })).toThrow(/wavelength is 0/);
  });

  it('refuses an index of 1, which is no film', () => {
    const air = { refractiveIndex: 1, wavelength: 0.0005, refractionAngle: 0, interferenceOrder: 1 };
    expect(() => brightFilmThickness(air)).toThrow(/refractive-index is 1/);
    expect(() => brightFilmThickness({ ...air, refractiveIndex: 1.0001 })).not.toThrow();
  });
});
