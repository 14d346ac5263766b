import type { Formula, Named } from '#core/quantity/formula.ts';
import { nearLimitOfCone } from './near-limit-of-cone.formula.ts';

type Inputs = 'circle-of-confusion' | 'effective-f-number' | 'magnification' | 'inverse-entrance-pupil-distance';

/**
 * How far behind the sharp plane, away from the lens, a point still looks sharp. Exact, for any chain of parts.
 *
 * far = c N_w / (m² − c N_w · 1/u), that is 1/far = m²/(c N_w) − 1/u
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.inverseEntrancePupilDistance *1/u*, entrance pupil to sharp plane, 1/mm: 0 for a telecentric chain, below 0 for a
 *   pupil behind the subject
 * @returns mm from the sharp plane; half the close-up depth for a telecentric chain, and less than the near limit for a pupil behind
 *   the subject. `Infinity` where a pupil in front is no wider than c/m: the plane lies at or beyond the hyperfocal distance.
 * @throws OutOfRange for anything not finite, and for what must be above zero and is not
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: derived in [README](README.md#any-chain): the near limit seen from the other side, where the pupil lies at −u.
 *
 * @example farLimitOfCone({ circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: 0.5 }) // 0.5
 */
export function farLimitOfCone(given: Named<Inputs>): number {
  return nearLimitOfCone({ ...given, inverseEntrancePupilDistance: -given.inverseEntrancePupilDistance });
}

export const farLimitOfConeFormula = {
  gives: 'far-limit',
  from: ['circle-of-confusion', 'effective-f-number', 'magnification', 'inverse-entrance-pupil-distance'],
  tex: String.raw`\q{far-limit} = \frac{\q{circle-of-confusion}\,\q{effective-f-number}}{\q{magnification}^2 - \q{circle-of-confusion}\,\q{effective-f-number} \cdot \q{inverse-entrance-pupil-distance}}`,
  evaluate: farLimitOfCone,
  says: 'The side away from the pupil is the deeper one: behind the plane for most lenses, in front of it where the pupil lies behind.',
  source: 'derived in core/depth/README.md#any-chain',
  checkedBy: ['cones-tanks-and-queues', 'depth-of-focus', 'pupils-in-matrices'],
  // The expression holds for a pupil behind the subject, or one wider than the blur in front of it; otherwise the limit is infinite.
  sample: {
    'circle-of-confusion': [0.001, 0.05],
    'effective-f-number': [1, 60],
    magnification: [0.8, 20],
    'inverse-entrance-pupil-distance': [-0.2, 0.2],
  },
} as const satisfies Formula<Inputs>;
