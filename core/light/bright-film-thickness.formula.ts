import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireFilmIndex, requireOrder, requireRefraction } from './require.ts';

type Inputs = 'refractive-index' | 'wavelength' | 'refraction-angle' | 'interference-order';

/**
 * How thick a film in air is where it sends a wavelength back most strongly.
 *
 * d_f = (j − ½) λ/(2 n_r cos θ')
 *
 * @param given.refractiveIndex *n_r*, of the film, above 1
 * @param given.wavelength *λ*, in air, mm, above 0
 * @param given.refractionAngle *θ'*, inside the film, from the normal, rad, 0 to below π/2
 * @param given.interferenceOrder *j*, the how-manieth bright band from the thin end, from 1; j + ½ is the dark one after it
 * @returns *d_f*, mm
 * @throws OutOfRange for anything outside those ranges
 *
 * Assumes air on both sides: half a wavelength is lost at one surface only.
 * Source: OpenStax, University Physics Vol. 3, section 3.4, example 3.6. Derived in [README](README.md#two-beams).
 *
 * @example brightFilmThickness({ refractiveIndex: 1.333, wavelength: 0.00065, refractionAngle: 0, interferenceOrder: 1 }) // 0.0001219
 */
export function brightFilmThickness({
  refractiveIndex,
  wavelength,
  refractionAngle,
  interferenceOrder,
}: Named<Inputs>): number {
  requireFilmIndex(refractiveIndex);
  requirePositive('wavelength', wavelength);
  requireRefraction(refractionAngle);
  requireOrder(interferenceOrder);
  return ((interferenceOrder - 0.5) * wavelength) / (2 * refractiveIndex * Math.cos(refractionAngle));
}

export const brightFilmThicknessFormula = {
  gives: 'film-thickness',
  from: ['refractive-index', 'wavelength', 'refraction-angle', 'interference-order'],
  tex: String.raw`\q{film-thickness} = \frac{\left(\q{interference-order} - \frac{1}{2}\right)\q{wavelength}}{2\,\q{refractive-index}\,\cos(\q{refraction-angle})}`,
  evaluate: brightFilmThickness,
  says: 'On a film that thickens evenly, the bright bands of one colour stand evenly spaced.',
  source: 'OpenStax, University Physics Vol. 3, section 3.4',
  checkedBy: ['newtons-colours', 'soap-film-openstax', 'soap-films-in-problem-books'],
  sample: { 'refraction-angle': [0, 0.8] },
} as const satisfies Formula<Inputs>;
