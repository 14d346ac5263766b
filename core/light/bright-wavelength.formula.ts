import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireFilmIndex, requireOrder, requireRefraction } from './require.ts';

type Inputs = 'refractive-index' | 'film-thickness' | 'refraction-angle' | 'interference-order';

/**
 * The wavelength that a film in air sends back most strongly.
 *
 * λ = 2 n_r d_f cos θ'/(j − ½)
 *
 * @param given.refractiveIndex *n_r*, of the film, above 1
 * @param given.filmThickness *d_f*, mm, above 0
 * @param given.refractionAngle *θ'*, inside the film, from the normal, rad, 0 to below π/2
 * @param given.interferenceOrder *j*, counted from 1, the longest such wavelength; halfway between two of them, at j + ½, the film is dark
 * @returns *λ*, in air, mm. Several may be visible at once, or none. A film seen more flatly favours a shorter one.
 * @throws OutOfRange for anything outside those ranges
 *
 * Assumes air on both sides: half a wavelength is lost at one surface only. It is not lost at both, as on a coated lens.
 * Source: OpenStax, University Physics Vol. 3, section 3.4. Derived in [README](README.md#two-beams).
 *
 * @example brightWavelength({ refractiveIndex: 1.33, filmThickness: 0.0001, refractionAngle: 0, interferenceOrder: 1 }) // 0.000532
 */
export function brightWavelength({
  refractiveIndex,
  filmThickness,
  refractionAngle,
  interferenceOrder,
}: Named<Inputs>): number {
  requireFilmIndex(refractiveIndex);
  requirePositive('film-thickness', filmThickness);
  requireRefraction(refractionAngle);
  requireOrder(interferenceOrder);
  return (2 * refractiveIndex * filmThickness * Math.cos(refractionAngle)) / (interferenceOrder - 0.5);
}

export const brightWavelengthFormula = {
  gives: 'wavelength',
  from: ['refractive-index', 'film-thickness', 'refraction-angle', 'interference-order'],
  tex: String.raw`\q{wavelength} = \frac{2\,\q{refractive-index}\,\q{film-thickness}\,\cos(\q{refraction-angle})}{\q{interference-order} - \frac{1}{2}}`,
  evaluate: brightWavelength,
  says: 'The extra path through the film and back must make up for the half wavelength lost at the first surface.',
  source: 'OpenStax, University Physics Vol. 3, section 3.4',
  checkedBy: ['soap-film-openstax', 'soap-films-in-problem-books'],
  sample: { 'refraction-angle': [0, 0.8] },
} as const satisfies Formula<Inputs>;
