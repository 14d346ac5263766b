import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-speed' | 'exposure-time';

/**
 * The streak on the sensor of a subject that moves across the picture while the shutter is open.
 *
 * blur = m v t
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectSpeed *v*, across the axis, mm/s; 0 or above
 * @param given.exposureTime *t*, s, or the duration of the flash where that makes the picture; above 0
 * @returns mm on the sensor. No stabilisation helps, nor does a tripod.
 * @throws OutOfRange for anything not finite, a magnification or a time of zero or below, and a speed below zero
 *
 * Assumes a speed that is steady while the shutter is open; for what swings to and fro see `swing.ts`.
 * Source: definition of the magnification. Derived in [README](README.md#sideways).
 *
 * @example motionBlurOfSubject({ magnification: 0.5, subjectSpeed: 100, exposureTime: 0.002 }) // 0.1
 */
export function motionBlurOfSubject({ magnification, subjectSpeed, exposureTime }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('subject-speed', subjectSpeed);
  requirePositive('exposure-time', exposureTime);
  return magnification * subjectSpeed * exposureTime;
}

export const motionBlurOfSubjectFormula = {
  gives: 'motion-blur',
  from: ['magnification', 'subject-speed', 'exposure-time'],
  tex: String.raw`\q{motion-blur} = \q{magnification}\,\q{subject-speed}\,\q{exposure-time}`,
  evaluate: motionBlurOfSubject,
  says: 'Larger on the sensor, faster on the sensor.',
  source: 'definition of the magnification',
  checkedBy: ['image-motion', 'turned-cameras-in-matrices'],
} as const satisfies Formula<Inputs>;
