import { requireNotNegative } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { combinedMotionBlur } from './combined-motion-blur.ts';

type Inputs = 'turning.motion-blur' | 'sideways.motion-blur' | 'subject.motion-blur';

/**
 * One streak for a camera that turns and drifts and a subject that moves, all while the shutter is open.
 *
 * blur = √(turning² + sideways² + subject²)
 *
 * @param given.turningMotionBlur streak that the turning of the camera leaves, mm on the sensor; 0 or above
 * @param given.sidewaysMotionBlur streak that its drift across the axis leaves, mm on the sensor; 0 or above
 * @param given.subjectMotionBlur streak that the subject’s own movement leaves, mm on the sensor; 0 or above
 * @returns mm on the sensor. In the single frame anything from the difference of the streaks to their sum.
 * @throws OutOfRange for anything not finite, and for a streak below zero
 *
 * Assumes causes that have nothing to do with each other: on average their squares add. For any number of them see `combined-motion-blur.ts`.
 * Source: variances of independent causes add. Derived in [README](README.md#slowest).
 *
 * @example motionBlurTogether({ turningMotionBlur: 0.06, sidewaysMotionBlur: 0.02, subjectMotionBlur: 0.03 }) // 0.07
 */
export function motionBlurTogether({
  turningMotionBlur,
  sidewaysMotionBlur,
  subjectMotionBlur,
}: Named<Inputs>): number {
  requireNotNegative('turning.motion-blur', turningMotionBlur);
  requireNotNegative('sideways.motion-blur', sidewaysMotionBlur);
  requireNotNegative('subject.motion-blur', subjectMotionBlur);
  return combinedMotionBlur([turningMotionBlur, sidewaysMotionBlur, subjectMotionBlur]);
}

export const motionBlurTogetherFormula = {
  gives: 'motion-blur',
  from: ['turning.motion-blur', 'sideways.motion-blur', 'subject.motion-blur'],
  tex: String.raw`\q{motion-blur} = \sqrt{\q{turning.motion-blur}^2 + \q{sideways.motion-blur}^2 + \q{subject.motion-blur}^2}`,
  evaluate: motionBlurTogether,
  says: 'The longest streak decides; one a third as long adds a twentieth to it.',
  source: 'derived in core/exposure/README.md#slowest',
  checkedBy: ['star-trails', 'turned-cameras-in-matrices'],
} as const satisfies Formula<Inputs>;
