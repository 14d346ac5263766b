import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { filmReflectanceOfTwoBeams } from './film-reflectance-of-two-beams.formula.ts';
import { filmReflectance } from './film-reflectance.formula.ts';

const quarterWave = { refractiveIndex: 1.5, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0006 };

describe('filmReflectanceOfTwoBeams', () => {
  it('is four times one surface where the beams are in step', () => {
    const share = filmReflectanceOfTwoBeams({ ...quarterWave, reflectance: 0.02 });
    expect(share).toEqual(closeTo(0.08, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the same fraction too large at its brightest as one surface’s share says', () => {
    const film = { ...quarterWave, reflectance: 0.02 };
    const excess = filmReflectanceOfTwoBeams(film) / filmReflectance(film) - 1;
    expect(excess).toEqual(closeTo(1.02 ** 2 - 1, { relative: 1e-12, because: 'a difference of near numbers' }));
  });

  it('tends to the sum of all beams as a surface sends back less and less', () => {
    const film = { ...quarterWave, wavelength: 0.0005, reflectance: 1e-8 };
    const all = filmReflectance(film);
    expect(filmReflectanceOfTwoBeams(film)).toEqual(
      closeTo(all, { relative: 3e-8, because: 'twice one surface’s share' }),
    );
  });

  it('refuses surfaces so bright that two beams would send back more than there was', () => {
    expect(filmReflectanceOfTwoBeams({ ...quarterWave, reflectance: 0.25 })).toEqual(
      closeTo(1, { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(() => filmReflectanceOfTwoBeams({ ...quarterWave, reflectance: 0.26 })).toThrow(OutOfRange);
    expect(() => filmReflectanceOfTwoBeams({ ...quarterWave, reflectance: 0.26 })).toThrow(/0 to 0.25/);
  });

  it('refuses an index of 1, which is no film', () => {
    const air = { reflectance: 0, refractiveIndex: 1, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0005 };
    expect(() => filmReflectanceOfTwoBeams(air)).toThrow(/refractive-index is 1/);
    expect(() => filmReflectanceOfTwoBeams({ ...air, refractiveIndex: 1.0001 })).not.toThrow();
  });
});
