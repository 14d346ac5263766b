import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { filmTurns } from './film-turns.ts';
import { requireFilmIndex, requireRefraction, requireShare } from './require.ts';

type Inputs = 'reflectance' | 'refractive-index' | 'film-thickness' | 'refraction-angle' | 'wavelength';

/**
 * The share of light of one wavelength that a film in air sends back, counting one beam from each surface: the short form.
 *
 * ρ_f = 4 ρ sin²(2 π n_r d_f cos θ'/λ)
 *
 * @param given.reflectance *ρ*, of one surface, 0 to 1/4: above that two beams alone would send back more than there was
 * @param given.refractiveIndex *n_r*, of the film, above 1
 * @param given.filmThickness *d_f*, mm, 0 or above
 * @param given.refractionAngle *θ'*, inside the film, from the normal, rad, 0 to below π/2
 * @param given.wavelength *λ*, in air, mm, above 0
 * @returns *ρ_f*. Right where the film is dark; where it is bright too large by (1 + ρ)² − 1: 4 % for soapy water seen squarely.
 *   `filmReflectance` counts every beam.
 * @throws OutOfRange for anything outside those ranges
 *
 * Assumes a clear film with air on both sides and beams of equal strength.
 * Source: derived in [README](README.md#two-beams).
 *
 * @example filmReflectanceOfTwoBeams({ reflectance: 0.02, refractiveIndex: 1.5, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0006 }) // 0.08
 */
export function filmReflectanceOfTwoBeams({
  reflectance,
  refractiveIndex,
  filmThickness,
  refractionAngle,
  wavelength,
}: Named<Inputs>): number {
  requireShare('reflectance', reflectance, 0.25);
  requireFilmIndex(refractiveIndex);
  requireNotNegative('film-thickness', filmThickness);
  requireRefraction(refractionAngle);
  requirePositive('wavelength', wavelength);
  const phase = (2 * Math.PI * refractiveIndex * filmThickness * Math.cos(refractionAngle)) / wavelength;
  return 4 * reflectance * Math.sin(phase) ** 2;
}

export const filmReflectanceOfTwoBeamsFormula = {
  gives: 'film-reflectance',
  from: ['reflectance', 'refractive-index', 'film-thickness', 'refraction-angle', 'wavelength'],
  tex: String.raw`\q{film-reflectance} = 4\,\q{reflectance}\,\sin\left(\frac{2\pi\,\q{refractive-index}\,\q{film-thickness}\,\cos(\q{refraction-angle})}{\q{wavelength}}\right)^2`,
  evaluate: filmReflectanceOfTwoBeams,
  says: 'Two beams in step have twice the swing of one, and four times its light.',
  source: 'derived in core/light/README.md#two-beams',
  checkedBy: ['soap-film-openstax'],
  // A phase of many turns loses digits on both sides.
  sample: { 'film-thickness': [0.00001, 0.001], 'refraction-angle': [0, 0.8], reflectance: [0, 0.2] },
  turns: filmTurns,
} as const satisfies Formula<Inputs>;
