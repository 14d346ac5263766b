import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'magnification' | 'subject-speed';

/**
 * The longest exposure in which a subject’s own movement passes for none.
 *
 * t = c / (m v)
 *
 * @param given.circleOfConfusion *c*, the longest streak still called sharp, mm on the sensor; above 0
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectSpeed *v*, across the axis, mm/s; above 0
 * @returns *t*, s. The camera’s own movement is not in it: `slowestExposureTime` has both.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a steady speed while the shutter is open.
 * Source: the streak m v t, solved for the time. Derived in [README](README.md#slowest).
 *
 * @example exposureTimeForSubjectSpeed({ circleOfConfusion: 0.02, magnification: 0.5, subjectSpeed: 5 }) // 0.008
 */
export function exposureTimeForSubjectSpeed({ circleOfConfusion, magnification, subjectSpeed }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('magnification', magnification);
  requirePositive('subject-speed', subjectSpeed);
  return circleOfConfusion / (magnification * subjectSpeed);
}

export const exposureTimeForSubjectSpeedFormula = {
  gives: 'exposure-time',
  from: ['circle-of-confusion', 'magnification', 'subject-speed'],
  tex: String.raw`\q{exposure-time} = \frac{\q{circle-of-confusion}}{\q{magnification}\,\q{subject-speed}}`,
  evaluate: exposureTimeForSubjectSpeed,
  says: 'Twice as large on the sensor, half the time.',
  source: 'derived in core/exposure/README.md#slowest',
  checkedBy: ['image-motion'],
} as const satisfies Formula<Inputs>;
