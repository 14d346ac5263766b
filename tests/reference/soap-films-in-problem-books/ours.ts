import { brightFilmThickness } from '#core/light/bright-film-thickness.formula.ts';
import { brightWavelength } from '#core/light/bright-wavelength.formula.ts';
import { refractionAngle } from '#core/light/refraction-angle.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Squarely {
  readonly wavelength: number;
  readonly refractiveIndex: number;
  readonly orders: readonly number[];
}
interface Aslant {
  readonly wavelength: number;
  readonly refractiveIndex: number;
  readonly incidenceAngle: number;
  readonly order: number;
}

const thickness = ({ orders, ...light }: Squarely) => ({
  thickness: orders.map((interferenceOrder) =>
    brightFilmThickness({ ...light, refractionAngle: 0, interferenceOrder }),
  ),
});

export const ours = oursById({
  'black-480': thickness,
  'black-550': thickness,
  'strongest-266': (film: { filmThickness: number; refractiveIndex: number }) => ({
    wavelength: brightWavelength({ ...film, refractionAngle: 0, interferenceOrder: 1 }),
  }),
  'wedge-bands': ({ wavelengths, ...film }: { wavelengths: readonly number[]; refractiveIndex: number }) => ({
    thickness: wavelengths.map((wavelength) =>
      brightFilmThickness({ ...film, wavelength, refractionAngle: 0, interferenceOrder: 1 }),
    ),
  }),
  aslant: ({ incidenceAngle, order, ...film }: Aslant) => {
    const inside = refractionAngle({ ...film, incidenceAngle });
    return {
      cosine: Math.cos(inside),
      thickness: brightFilmThickness({ ...film, refractionAngle: inside, interferenceOrder: order }),
    };
  },
});
