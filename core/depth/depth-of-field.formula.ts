import type { Formula, Named } from '#core/quantity/formula.ts';
import { farLimit } from './far-limit.formula.ts';
import { nearLimit } from './near-limit.formula.ts';

type Inputs = 'circle-of-confusion' | 'entrance-pupil-distance' | 'magnification' | 'entrance-pupil';

/**
 * The whole depth that looks sharp: near limit plus far limit. Exact.
 *
 * T = 2 c u m D / (m² D² − c²)
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.entrancePupil *D*, diameter, mm, above 0
 * @returns *T*, mm; `Infinity` where the far limit is. The sharp plane does not lie in its middle but nearer the lens.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: sum of the limits, derived in [README](README.md#limits).
 *
 * @example depthOfField({ circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 5 }) // 0.80001...
 */
export function depthOfField(given: Named<Inputs>): number {
  return nearLimit(given) + farLimit(given);
}

export const depthOfFieldFormula = {
  gives: 'depth-of-field',
  from: ['circle-of-confusion', 'entrance-pupil-distance', 'magnification', 'entrance-pupil'],
  tex: String.raw`\q{depth-of-field} = \frac{2\,\q{circle-of-confusion}\,\q{entrance-pupil-distance}\,\q{magnification}\,\q{entrance-pupil}}{\q{magnification}^2\,\q{entrance-pupil}^2 - \q{circle-of-confusion}^2}`,
  evaluate: depthOfField,
  says: 'The near and the far limit together.',
  source: 'derived in core/depth/README.md#limits',
  checkedBy: ['common-practice', 'depth-with-pupils', 'pupils-in-matrices'],
  // The expression holds for a pupil wider than the blur in the subject plane; otherwise the depth is infinite.
  sample: { 'circle-of-confusion': [0.001, 0.05], magnification: [0.1, 20], 'entrance-pupil': [0.6, 400] },
} as const satisfies Formula<Inputs>;
