import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { filmTurns } from './film-turns.ts';
import { requireFilmIndex, requireRefraction, requireShare } from './require.ts';

type Inputs = 'reflectance' | 'refractive-index' | 'film-thickness' | 'refraction-angle' | 'wavelength';

/**
 * The share of light of one wavelength that a film in air sends back: all the beams that bounce within it, added up.
 *
 * ρ_f = 4 ρ sin² φ/((1 − ρ)² + 4 ρ sin² φ), φ = 2 π n_r d_f cos θ'/λ
 *
 * @param given.reflectance *ρ*, of one surface, at the angle and for the polarisation in hand, 0 to below 1
 * @param given.refractiveIndex *n_r*, of the film, above 1
 * @param given.filmThickness *d_f*, mm, 0 or above
 * @param given.refractionAngle *θ'*, inside the film, from the normal, rad, 0 to below π/2
 * @param given.wavelength *λ*, in air, mm, above 0
 * @returns *ρ_f*, 0 to 1, of the whole film; 0 for a film much thinner than λ, which looks black. The rest goes through.
 * @throws OutOfRange for anything outside those ranges
 *
 * Assumes a clear film with air on both sides and light that reaches across it in step.
 * Source: Born and Wolf, Principles of Optics, section 7.6.1, Airy's formula (from memory). Derived in
 * [README](README.md#all-beams).
 *
 * @example filmReflectance({ reflectance: 0.04, refractiveIndex: 1.5, filmThickness: 0.0001, refractionAngle: 0, wavelength: 0.0006 }) // 0.1479289...
 */
export function filmReflectance({
  reflectance,
  refractiveIndex,
  filmThickness,
  refractionAngle,
  wavelength,
}: Named<Inputs>): number {
  requireShare('reflectance', reflectance, 1);
  requireFilmIndex(refractiveIndex);
  requireNotNegative('film-thickness', filmThickness);
  requireRefraction(refractionAngle);
  requirePositive('wavelength', wavelength);
  const phase = (2 * Math.PI * refractiveIndex * filmThickness * Math.cos(refractionAngle)) / wavelength;
  const beams = 4 * reflectance * Math.sin(phase) ** 2;
  return beams / ((1 - reflectance) ** 2 + beams);
}

export const filmReflectanceFormula = {
  gives: 'film-reflectance',
  from: ['reflectance', 'refractive-index', 'film-thickness', 'refraction-angle', 'wavelength'],
  tex: String.raw`\q{film-reflectance} = \frac{4\,\q{reflectance}\,\sin\left(\frac{2\pi\,\q{refractive-index}\,\q{film-thickness}\,\cos(\q{refraction-angle})}{\q{wavelength}}\right)^2}{\left(1 - \q{reflectance}\right)^2 + 4\,\q{reflectance}\,\sin\left(\frac{2\pi\,\q{refractive-index}\,\q{film-thickness}\,\cos(\q{refraction-angle})}{\q{wavelength}}\right)^2}`,
  evaluate: filmReflectance,
  says: 'What one surface sends back meets what the other sends back, in step or out of step, wavelength by wavelength.',
  source: 'Born and Wolf, Principles of Optics, section 7.6.1 (from memory)',
  checkedBy: ['reflecting-surfaces'],
  // A phase of many turns loses digits on both sides.
  sample: { 'film-thickness': [0.00001, 0.001], 'refraction-angle': [0, 0.8], reflectance: [0, 0.9] },
  turns: filmTurns,
} as const satisfies Formula<Inputs>;
