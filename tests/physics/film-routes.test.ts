import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmReflectance } from '#core/light/film-reflectance.formula.ts';
import { refractionAngle } from '#core/light/refraction-angle.formula.ts';
import { soapFilmColour, soapFilmReflectance } from '#core/light/soap-film-colour.ts';
import { surfaceReflectanceP } from '#core/light/surface-reflectance-p.formula.ts';
import { surfaceReflectanceS } from '#core/light/surface-reflectance-s.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { throughOneLayer } from '#tests/support/one-layer.ts';

const anyFilm = fc.record({
  refractiveIndex: fc.double({ min: 1.05, max: 3, noNaN: true }),
  filmThickness: fc.double({ min: 0, max: 0.002, noNaN: true }),
  incidenceAngle: fc.double({ min: 0, max: 1.55, noNaN: true }),
  wavelength: fc.double({ min: 0.00038, max: 0.00078, noNaN: true }),
});
const rounding = { absolute: 1e-12, because: 'a phase of some turns' };

describe('a film', () => {
  it('sends back the same by adding up all beams as by the matrix of its layer, in s and in p', () => {
    fc.assert(
      fc.property(anyFilm, (film) => {
        const rest = { ...film, refractionAngle: refractionAngle(film) };
        const layer = { ...film, thickness: film.filmThickness };
        for (const [polarisation, surface] of [
          ['s', surfaceReflectanceS],
          ['p', surfaceReflectanceP],
        ] as const) {
          const bySum = filmReflectance({ ...rest, reflectance: surface(film) });
          const { reflected, transmitted } = throughOneLayer(layer, polarisation);
          expect(bySum).toEqual(closeTo(reflected, rounding));
          expect(reflected + transmitted).toEqual(closeTo(1, rounding));
        }
      }),
      { seed: 12, numRuns: 500 },
    );
  });

  it('sends back the same by a thousand beams added one by one', () => {
    const [n, thickness, angle, wavelength] = [1.33, 0.00043, 0.6, 0.00055];
    const inside = refractionAngle({ incidenceAngle: angle, refractiveIndex: n });
    const surface = surfaceReflectanceS({ incidenceAngle: angle, refractiveIndex: n });
    const phase = (4 * Math.PI * n * thickness * Math.cos(inside)) / wavelength;
    // The first beam is turned over against all others; each later one has been reflected inside 1, 3, 5 … times.
    let [real, imaginary] = [-Math.sqrt(surface), 0];
    for (let beam = 0; beam < 1000; beam++) {
      const swing = (1 - surface) * Math.sqrt(surface) ** (2 * beam + 1);
      real += swing * Math.cos(phase * (beam + 1));
      imaginary += swing * Math.sin(phase * (beam + 1));
    }
    const all = filmReflectance({
      reflectance: surface,
      refractiveIndex: n,
      filmThickness: thickness,
      refractionAngle: inside,
      wavelength,
    });
    expect(all).toEqual(closeTo(real ** 2 + imaginary ** 2, rounding));
  });

  it('sends unpolarised light back as the mean of both', () => {
    fc.assert(
      fc.property(anyFilm, (film) => {
        const layer = { ...film, thickness: film.filmThickness };
        const mean = (throughOneLayer(layer, 's').reflected + throughOneLayer(layer, 'p').reflected) / 2;
        expect(soapFilmReflectance(film, film.wavelength)).toEqual(closeTo(mean, rounding));
      }),
      { seed: 13 },
    );
  });

  it('depends on thickness, index and angle inside by their product alone, surfaces aside', () => {
    fc.assert(
      fc.property(anyFilm, fc.double({ min: 0, max: 1.2, noNaN: true }), (film, inside) => {
        const flat = {
          ...film,
          reflectance: 0.1,
          refractionAngle: 0,
          filmThickness: film.filmThickness * Math.cos(inside),
        };
        const slanting = { ...film, reflectance: 0.1, refractionAngle: inside };
        expect(filmReflectance(slanting)).toEqual(closeTo(filmReflectance(flat), rounding));
      }),
      { seed: 14 },
    );
  });
});

describe('the colour of a film', () => {
  it('does not hang on how finely its spectrum is sampled', () => {
    // Just below and above where the sampling is split anew the colour must run on.
    for (const filmThickness of [0.0013, 0.0014, 0.002, 0.0027, 0.0041]) {
      const [thin, thick] = [-1e-9, 1e-9].map(
        (step) =>
          soapFilmColour({ filmThickness: filmThickness + step, refractiveIndex: 1.33, incidenceAngle: 0 }).tristimulus,
      );
      const because = 'a millionth of a wavelength thicker, and perhaps sampled more finely';
      expect(thick).toEqual(thin!.map((value) => closeTo(value, { absolute: 2e-5, because })));
    }
  });

  it('adds up over wavelengths to no more than one film can send back', () => {
    fc.assert(
      fc.property(anyFilm, (film) => {
        const { tristimulus } = soapFilmColour(film);
        expect(tristimulus[1]).toBeGreaterThanOrEqual(0);
        expect(tristimulus[1]).toBeLessThanOrEqual(1);
      }),
      { seed: 15, numRuns: 50 },
    );
  });
});
