import { brightFilmThickness } from '#core/light/bright-film-thickness.formula.ts';
import { brightWavelength } from '#core/light/bright-wavelength.formula.ts';
import { filmReflectanceOfTwoBeams } from '#core/light/film-reflectance-of-two-beams.formula.ts';
import { mostReflected, soapFilmReflectance } from '#core/light/soap-film-colour.ts';
import { surfaceReflectanceS } from '#core/light/surface-reflectance-s.formula.ts';
import { wedgeFilmThickness } from '#core/light/wedge-film.ts';
import { oursById } from '#tests/support/reference-case.ts';

const thicknesses = ({ orders, ...light }: { wavelength: number; refractiveIndex: number; orders: number[] }) => ({
  thickness: orders.map((interferenceOrder) =>
    brightFilmThickness({ ...light, refractionAngle: 0, interferenceOrder }),
  ),
});

export const ours = oursById({
  'up3-ex3.6-bright': thicknesses,
  'up3-ex3.6-dark': thicknesses,
  'up3-check3.4-bright': thicknesses,
  'up3-check3.4-dark': thicknesses,
  'up3-ex3.6-strength': (film: { wavelength: number; refractiveIndex: number; thicknesses: readonly number[] }) => ({
    share: film.thicknesses.map((filmThickness) => {
      const reflectance = surfaceReflectanceS({ ...film, incidenceAngle: 0 });
      const all = filmReflectanceOfTwoBeams({ ...film, filmThickness, refractionAngle: 0, reflectance });
      return all / (4 * reflectance);
    }),
  }),
  'up3-film-100': (film: { filmThickness: number; refractiveIndex: number }) => ({
    wavelength: brightWavelength({ ...film, refractionAngle: 0, interferenceOrder: 1 }),
  }),
  'up3-wedge': (wedge: { wavelength: number; refractiveIndex: number; thicknessAtBottom: number; down: number[] }) => ({
    share: wedge.down.map((down) => {
      const film = { refractiveIndex: wedge.refractiveIndex, incidenceAngle: 0 };
      const filmThickness = wedgeFilmThickness({ thicknessAtTop: 0, thicknessAtBottom: wedge.thicknessAtBottom, down });
      return soapFilmReflectance({ ...film, filmThickness }, wedge.wavelength) / mostReflected(film);
    }),
  }),
});
