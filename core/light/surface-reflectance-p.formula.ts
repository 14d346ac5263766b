import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireIncidence, requireIndex } from './require.ts';

type Inputs = 'incidence-angle' | 'refractive-index';

/**
 * The share of light that one surface sends back, for light that swings within the plane of incidence (p).
 *
 * ρ = ((n_r² cos θ − √(n_r² − sin² θ))/(n_r² cos θ + √(n_r² − sin² θ)))²
 *
 * @param given.incidenceAngle *θ*, outside, from the surface normal, rad, 0 to π/2
 * @param given.refractiveIndex *n_r*, behind the surface against before it, 1 or above
 * @returns *ρ*, 0 to 1, of one surface; it is zero where tan θ = n_r, 53° for water. The light of lamps and sky is half of each kind: average the two.
 * @throws OutOfRange for an angle beyond π/2 and an index below 1
 *
 * Assumes a clear, smooth surface. The same from inside, for a ray at the angle that it has inside.
 * Source: Born and Wolf, Principles of Optics, section 1.5.3, Fresnel's formulae (from memory), with n_r cos θ' written
 * as √(n_r² − sin² θ). See [README](README.md#one-surface).
 *
 * @example surfaceReflectanceP({ incidenceAngle: 0, refractiveIndex: 1.5 }) // 0.04
 */
export function surfaceReflectanceP({ incidenceAngle, refractiveIndex }: Named<Inputs>): number {
  requireIncidence(incidenceAngle);
  requireIndex(refractiveIndex);
  const outside = Math.cos(incidenceAngle);
  // n² − sin² θ, so written that nothing cancels where n is close to 1.
  const inside = Math.sqrt((refractiveIndex - 1) * (refractiveIndex + 1) + outside ** 2);
  return ((refractiveIndex ** 2 * outside - inside) / (refractiveIndex ** 2 * outside + inside)) ** 2;
}

export const surfaceReflectancePFormula = {
  gives: 'reflectance',
  from: ['incidence-angle', 'refractive-index'],
  tex: String.raw`\q{reflectance} = \left(\frac{\q{refractive-index}^2\,\cos(\q{incidence-angle}) - \sqrt{\q{refractive-index}^2 - \sin(\q{incidence-angle})^2}}{\q{refractive-index}^2\,\cos(\q{incidence-angle}) + \sqrt{\q{refractive-index}^2 - \sin(\q{incidence-angle})^2}}\right)^2`,
  evaluate: surfaceReflectanceP,
  says: 'At one angle, 53° for water, light that swings in the plane of the beam and its reflection is not reflected at all; what is left of the glare a polarising filter can remove.',
  source: 'Born and Wolf, Principles of Optics, section 1.5.3 (from memory)',
  checkedBy: ['reflecting-surfaces'],
  // Nearer to 1 the surface all but vanishes, and the two sides differ by rounding alone.
  sample: { 'refractive-index': [1.1, 4] },
} as const satisfies Formula<Inputs>;
