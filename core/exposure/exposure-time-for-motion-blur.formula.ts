import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'exposure-time' | 'motion-blur';

/**
 * The longest exposure whose streak is no longer than a limit, from the streak of any other exposure.
 *
 * t_slowest = c t/blur
 *
 * @param given.circleOfConfusion *c*, the longest streak still called sharp, mm on the sensor; above 0
 * @param given.exposureTime *t*, in which the streak is drawn, s; above 0
 * @param given.motionBlur the streak of that time, of all that moves together, mm on the sensor; above 0
 * @returns s. Whatever moves and about whatever the camera turns: that is in the streak. As the streak is, an average.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes movements that are steady while the shutter is open, so that streaks grow as the time does.
 * Source: proportion. Derived in [README](README.md#slowest).
 *
 * @example exposureTimeForMotionBlur({ circleOfConfusion: 0.02, exposureTime: 0.01, motionBlur: 0.05 }) // 0.004
 */
export function exposureTimeForMotionBlur({ circleOfConfusion, exposureTime, motionBlur }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('exposure-time', exposureTime);
  requirePositive('motion-blur', motionBlur);
  return (circleOfConfusion * exposureTime) / motionBlur;
}

export const exposureTimeForMotionBlurFormula = {
  gives: 'slowest.exposure-time',
  from: ['circle-of-confusion', 'exposure-time', 'motion-blur'],
  tex: String.raw`\q{slowest.exposure-time} = \frac{\q{circle-of-confusion}\,\q{exposure-time}}{\q{motion-blur}}`,
  evaluate: exposureTimeForMotionBlur,
  says: 'Half the time, half the streak: measure one streak and you know the time for any other.',
  source: 'derived in core/exposure/README.md#slowest',
  checkedBy: ['star-trails', 'turned-cameras-in-matrices'],
} as const satisfies Formula<Inputs>;
