import type { Formula, Named } from '#core/quantity/formula.ts';
import { farLimitOfCone } from './far-limit-of-cone.formula.ts';
import { nearLimitOfCone } from './near-limit-of-cone.formula.ts';

type Inputs = 'circle-of-confusion' | 'effective-f-number' | 'magnification' | 'inverse-entrance-pupil-distance';

/**
 * The whole depth that looks sharp, near limit plus far limit. Exact, for any chain of parts.
 *
 * T = 2 c N_w m² / (m⁴ − (c N_w · 1/u)²)
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.inverseEntrancePupilDistance *1/u*, entrance pupil to sharp plane, 1/mm: 0 for a telecentric chain, below 0 for a
 *   pupil behind the subject; its sign only says which side is the deeper
 * @returns *T*, mm; `Infinity` where one of the limits is. Just the close-up form for a telecentric chain, more for any other.
 * @throws OutOfRange for anything not finite, and for what must be above zero and is not
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: sum of the limits, derived in [README](README.md#any-chain).
 *
 * @example depthOfFieldOfCone({ circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: 0 }) // 0.8
 */
export function depthOfFieldOfCone(given: Named<Inputs>): number {
  return nearLimitOfCone(given) + farLimitOfCone(given);
}

export const depthOfFieldOfConeFormula = {
  gives: 'depth-of-field',
  from: ['circle-of-confusion', 'effective-f-number', 'magnification', 'inverse-entrance-pupil-distance'],
  tex: String.raw`\q{depth-of-field} = \frac{2\,\q{circle-of-confusion}\,\q{effective-f-number}\,\q{magnification}^2}{\q{magnification}^4 - \left(\q{circle-of-confusion}\,\q{effective-f-number} \cdot \q{inverse-entrance-pupil-distance}\right)^2}`,
  evaluate: depthOfFieldOfCone,
  says: 'Exact for any chain; where the pupil is far away only m and the effective f-number are left.',
  source: 'derived in core/depth/README.md#any-chain',
  checkedBy: ['cones-tanks-and-queues', 'depth-of-focus', 'depth-with-pupils', 'pupils-in-matrices'],
  // The expression holds for a pupil wider than the blur in the subject plane; otherwise the depth is infinite.
  sample: {
    'circle-of-confusion': [0.001, 0.05],
    'effective-f-number': [1, 60],
    magnification: [0.8, 20],
    'inverse-entrance-pupil-distance': [-0.2, 0.2],
  },
} as const satisfies Formula<Inputs>;
