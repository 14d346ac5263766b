import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { requireCone } from './cone.ts';

type Inputs = 'circle-of-confusion' | 'effective-f-number' | 'magnification' | 'inverse-entrance-pupil-distance';

/**
 * How far in front of the sharp plane, towards the lens, a point still looks sharp. Exact, for any chain of parts.
 *
 * near = c N_w / (m² + c N_w · 1/u), that is 1/near = m²/(c N_w) + 1/u
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.inverseEntrancePupilDistance *1/u*, entrance pupil to sharp plane, 1/mm: 0 for a telecentric chain, below 0 for a
 *   pupil behind the subject
 * @returns mm from the sharp plane; half the close-up depth for a telecentric chain. `Infinity` where a pupil behind the subject is no
 *   wider than c/m: then all is sharp from here to the lens.
 * @throws OutOfRange for anything not finite, and for what must be above zero and is not
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: derived in [README](README.md#any-chain) from the blur of a point out of focus.
 *
 * @example nearLimitOfCone({ circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1, inverseEntrancePupilDistance: -0.5 }) // 0.5
 */
export function nearLimitOfCone({ circleOfConfusion, ...given }: Named<Inputs>): number {
  const { magnification, effectiveFNumber, inverseEntrancePupilDistance } = requireCone(given);
  const spread = requirePositive('circle-of-confusion', circleOfConfusion) * effectiveFNumber;
  const narrowing = magnification ** 2 + spread * inverseEntrancePupilDistance;
  return narrowing > 0 ? spread / narrowing : Infinity;
}

export const nearLimitOfConeFormula = {
  gives: 'near-limit',
  from: ['circle-of-confusion', 'effective-f-number', 'magnification', 'inverse-entrance-pupil-distance'],
  tex: String.raw`\q{near-limit} = \frac{\q{circle-of-confusion}\,\q{effective-f-number}}{\q{magnification}^2 + \q{circle-of-confusion}\,\q{effective-f-number} \cdot \q{inverse-entrance-pupil-distance}}`,
  evaluate: nearLimitOfCone,
  says: 'Three numbers of a chain say how deep it sees: m, the effective f-number, and from how far its pupil looks.',
  source: 'derived in core/depth/README.md#any-chain',
  checkedBy: ['cones-tanks-and-queues', 'depth-of-focus', 'pupils-in-matrices'],
  // The expression holds for a pupil in front of the subject, or one wider than the blur behind it; otherwise the limit is infinite.
  sample: {
    'circle-of-confusion': [0.001, 0.05],
    'effective-f-number': [1, 60],
    magnification: [0.8, 20],
    'inverse-entrance-pupil-distance': [-0.2, 0.2],
  },
} as const satisfies Formula<Inputs>;
