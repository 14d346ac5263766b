import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'entrance-pupil-distance' | 'magnification' | 'entrance-pupil';

/**
 * How far behind the sharp plane, away from the lens, a point still looks sharp. Exact.
 *
 * far = c u / (m D − c)
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.entrancePupil *D*, diameter, mm, above 0
 * @returns mm from the sharp plane, more than the near limit; `Infinity` where D ≤ c/m, when everything behind is sharp:
 *   the sharp plane then lies at or beyond the hyperfocal distance. Not a distance from the sensor.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: derived in [README](README.md#limits) from similar triangles at the entrance pupil.
 *
 * @example farLimit({ circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 5.02 }) // 0.4
 */
export function farLimit({
  circleOfConfusion,
  entrancePupilDistance,
  magnification,
  entrancePupil,
}: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil', entrancePupil);
  const excess = magnification * entrancePupil - circleOfConfusion;
  return excess > 0 ? (circleOfConfusion * entrancePupilDistance) / excess : Infinity;
}

export const farLimitFormula = {
  gives: 'far-limit',
  from: ['circle-of-confusion', 'entrance-pupil-distance', 'magnification', 'entrance-pupil'],
  tex: String.raw`\q{far-limit} = \frac{\q{circle-of-confusion}\,\q{entrance-pupil-distance}}{\q{magnification}\,\q{entrance-pupil} - \q{circle-of-confusion}}`,
  evaluate: farLimit,
  says: 'Away from the lens the blur grows more slowly, so more is sharp behind than in front; past the hyperfocal distance, everything is.',
  source: 'derived in core/depth/README.md#limits',
  checkedBy: [
    'common-practice',
    'depth-from-hyperfocal',
    'depth-maths-system',
    'library-exif-composites',
    'pupils-in-matrices',
  ],
  // The expression holds for a pupil wider than the blur in the subject plane; otherwise the limit is infinite.
  sample: { 'circle-of-confusion': [0.001, 0.05], magnification: [0.1, 20], 'entrance-pupil': [0.6, 400] },
} as const satisfies Formula<Inputs>;
