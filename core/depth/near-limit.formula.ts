import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'entrance-pupil-distance' | 'magnification' | 'entrance-pupil';

/**
 * How far in front of the sharp plane, towards the lens, a point still looks sharp. Exact.
 *
 * near = c u / (m D + c)
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.entrancePupil *D*, diameter, mm, above 0
 * @returns mm from the sharp plane, always less than *u* and less than the far limit. Not a distance from the sensor, as
 *   many tables print it.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes geometrical optics: where the cone is wide (NA above 0.1) waves set a depth of their own.
 * Source: derived in [README](README.md#limits) from similar triangles at the entrance pupil.
 *
 * @example nearLimit({ circleOfConfusion: 0.02, entrancePupilDistance: 100, magnification: 1, entrancePupil: 4.98 }) // 0.4
 */
export function nearLimit({
  circleOfConfusion,
  entrancePupilDistance,
  magnification,
  entrancePupil,
}: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil', entrancePupil);
  return (circleOfConfusion * entrancePupilDistance) / (magnification * entrancePupil + circleOfConfusion);
}

export const nearLimitFormula = {
  gives: 'near-limit',
  from: ['circle-of-confusion', 'entrance-pupil-distance', 'magnification', 'entrance-pupil'],
  tex: String.raw`\q{near-limit} = \frac{\q{circle-of-confusion}\,\q{entrance-pupil-distance}}{\q{magnification}\,\q{entrance-pupil} + \q{circle-of-confusion}}`,
  evaluate: nearLimit,
  says: 'This far towards the lens, the blur of a point has grown to the circle of confusion.',
  source: 'derived in core/depth/README.md#limits',
  checkedBy: [
    'common-practice',
    'depth-from-hyperfocal',
    'depth-maths-system',
    'library-exif-composites',
    'pupils-in-matrices',
  ],
} as const satisfies Formula<Inputs>;
