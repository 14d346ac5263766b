import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireIncidence, requireIndex } from './require.ts';

type Inputs = 'incidence-angle' | 'refractive-index';

/**
 * The direction in which light runs inside a film.
 *
 * θ' = arcsin(sin θ/n_r)
 *
 * @param given.incidenceAngle *θ*, outside, from the surface normal, rad, 0 to π/2
 * @param given.refractiveIndex *n_r*, of the film against the air about it, 1 or above
 * @returns *θ'*, rad, from the normal, never above arcsin(1/n_r): 48.6° in water
 * @throws OutOfRange for an angle beyond π/2 and an index below 1
 *
 * Source: OpenStax, University Physics Vol. 3, section 1.3 (law of refraction). Used in [README](README.md#inside-the-film).
 *
 * @example refractionAngle({ incidenceAngle: Math.PI / 2, refractiveIndex: 2 }) // 0.5235987...
 */
export function refractionAngle({ incidenceAngle, refractiveIndex }: Named<Inputs>): number {
  requireIncidence(incidenceAngle);
  requireIndex(refractiveIndex);
  return Math.asin(Math.sin(incidenceAngle) / refractiveIndex);
}

export const refractionAngleFormula = {
  gives: 'refraction-angle',
  from: ['incidence-angle', 'refractive-index'],
  tex: String.raw`\q{refraction-angle} = \arcsin\left(\frac{\sin(\q{incidence-angle})}{\q{refractive-index}}\right)`,
  evaluate: refractionAngle,
  says: 'Light that grazes a film still dives into it steeply.',
  source: 'OpenStax, University Physics Vol. 3, section 1.3',
  checkedBy: ['newtons-colours', 'reflecting-surfaces', 'soap-films-in-problem-books'],
} as const satisfies Formula<Inputs>;
