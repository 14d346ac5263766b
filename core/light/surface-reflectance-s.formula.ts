import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireIncidence, requireIndex } from './require.ts';

type Inputs = 'incidence-angle' | 'refractive-index';

/**
 * The share of light that one surface sends back, for light that swings across the plane of incidence (s).
 *
 * ρ = ((cos θ − √(n_r² − sin² θ))/(cos θ + √(n_r² − sin² θ)))²
 *
 * @param given.incidenceAngle *θ*, outside, from the surface normal, rad, 0 to π/2
 * @param given.refractiveIndex *n_r*, behind the surface against before it, 1 or above
 * @returns *ρ*, 0 to 1, of one surface; it only grows as the light comes in more flatly. The light of lamps and sky is half of each kind: average the two.
 * @throws OutOfRange for an angle beyond π/2 and an index below 1
 *
 * Assumes a clear, smooth surface. The same from inside, for a ray at the angle that it has inside.
 * Source: Born and Wolf, Principles of Optics, section 1.5.3, Fresnel's formulae (from memory), with n_r cos θ' written
 * as √(n_r² − sin² θ). See [README](README.md#one-surface).
 *
 * @example surfaceReflectanceS({ incidenceAngle: 0, refractiveIndex: 1.5 }) // 0.04
 */
export function surfaceReflectanceS({ incidenceAngle, refractiveIndex }: Named<Inputs>): number {
  requireIncidence(incidenceAngle);
  requireIndex(refractiveIndex);
  const outside = Math.cos(incidenceAngle);
  // n² − sin² θ, so written that nothing cancels where n is close to 1.
  const inside = Math.sqrt((refractiveIndex - 1) * (refractiveIndex + 1) + outside ** 2);
  return ((outside - inside) / (outside + inside)) ** 2;
}

export const surfaceReflectanceSFormula = {
  gives: 'reflectance',
  from: ['incidence-angle', 'refractive-index'],
  tex: String.raw`\q{reflectance} = \left(\frac{\cos(\q{incidence-angle}) - \sqrt{\q{refractive-index}^2 - \sin(\q{incidence-angle})^2}}{\cos(\q{incidence-angle}) + \sqrt{\q{refractive-index}^2 - \sin(\q{incidence-angle})^2}}\right)^2`,
  evaluate: surfaceReflectanceS,
  says: 'The more flatly light meets a surface, the more of it comes back.',
  source: 'Born and Wolf, Principles of Optics, section 1.5.3 (from memory)',
  checkedBy: ['reflecting-surfaces', 'soap-film-openstax'],
  // Nearer to 1 the surface all but vanishes, and the two sides differ by rounding alone.
  sample: { 'refractive-index': [1.1, 4] },
} as const satisfies Formula<Inputs>;
