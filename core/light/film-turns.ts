import { OutOfRange } from '#core/quantity/errors.ts';
import type { Range } from '#core/quantity/expected.ts';
import type { Named } from '#core/quantity/formula.ts';

type Film = Named<'refractive-index' | 'film-thickness' | 'refraction-angle' | 'wavelength'>;

/** A film of more bands than this is none in which light keeps step, and finding every one would take a page's time. */
const mostBands = 10000;

/**
 * Where the light from a film turns from brighter to darker or back as one letter changes: at 4 n_r d_f cos θ'/λ = 1, 2, 3 …
 * For `turns` of the formulas of a film's reflectance.
 */
export const filmTurns = {
  'film-thickness': (film: Omit<Film, 'filmThickness'>, range: Range) => {
    const first = film.wavelength / (4 * film.refractiveIndex * Math.cos(film.refractionAngle));
    return counted(range.most / first).map((order) => order * first);
  },
  'refractive-index': (film: Omit<Film, 'refractiveIndex'>, range: Range) => {
    const first = film.wavelength / (4 * film.filmThickness * Math.cos(film.refractionAngle));
    return counted(range.most / first).map((order) => order * first);
  },
  wavelength: (film: Omit<Film, 'wavelength'>, range: Range) => {
    const longest = 4 * film.refractiveIndex * film.filmThickness * Math.cos(film.refractionAngle);
    return counted(longest / range.least).map((order) => longest / order);
  },
  'refraction-angle': (film: Omit<Film, 'refractionAngle'>) => {
    const most = (4 * film.refractiveIndex * film.filmThickness) / film.wavelength;
    return counted(most).map((order) => Math.acos(Math.min(1, order / most)));
  },
};

function counted(most: number): number[] {
  if (!(most <= mostBands)) {
    if (Number.isNaN(most)) return [];
    throw new OutOfRange('interference-order', most, `films of at most ${mostBands} bands`);
  }
  return Array.from({ length: Math.max(0, Math.floor(most)) }, (_, index) => index + 1);
}
