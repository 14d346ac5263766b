import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { combinedMotionBlur } from './combined-motion-blur.ts';
import { motionBlurOfSubject } from './motion-blur-of-subject.formula.ts';
import { motionBlurSideways } from './motion-blur-sideways.formula.ts';
import { motionBlurTurningAboutSensor } from './motion-blur-turning-about-sensor.formula.ts';

type Inputs =
  | 'circle-of-confusion'
  | 'focal-length'
  | 'magnification'
  | 'principal-separation'
  | 'shake-rate'
  | 'stabilisation'
  | 'sideways-speed'
  | 'subject-speed';

/**
 * The longest exposure that keeps all movement together within a blur: turning about the sensor, sway, and the subject’s own.
 *
 * t = c / √(([f (1 + m)² + m HH′] ω / 2^stabilisation)² + (m v_s)² + (m v)²)
 *
 * @param given.circleOfConfusion *c*, the longest streak still called sharp, mm on the sensor; above 0
 * @param given.focalLength *f*, at the focus setting in use, mm; above 0
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.principalSeparation *HH′*, mm; of either sign
 * @param given.shakeRate *ω*, rad/s; 0 or above: 0 on a tripod
 * @param given.stabilisation stops, 0 or above; 0 without it. As rated, which is for a subject far away: see below
 * @param given.sidewaysSpeed *v_s*, of the camera, mm/s; 0 or above
 * @param given.subjectSpeed *v*, of the subject, mm/s; 0 or above
 * @returns *t*, s. An estimate of what happens mostly: half of all frames come out worse where ω and v_s are average values.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a stabilisation or a speed below zero, for principal planes that would put
 *   the subject behind the sensor, and where nothing would be left that moves
 *
 * Assumes movements that are independent and steady: their streaks add as the root of their squares, neither always in line nor always
 * opposed. The camera is taken to turn about the middle of its sensor.
 * Stabilisation is taken to divide the whole turn, which is what it is rated for far away. Close up it does less: one that knows neither *m*
 * nor about what the camera turns takes away *f ω t* and leaves the rest, three quarters of it at life size; count the stops there as an upper bound.
 * Source: the three streaks of this topic, solved for the time. Derived in [README](README.md#slowest).
 *
 * @example slowestExposureTime({ circleOfConfusion: 0.02, focalLength: 100, magnification: 1, principalSeparation: 0, shakeRate: 0.01, stabilisation: 0, sidewaysSpeed: 3, subjectSpeed: 0 }) // 0.004
 */
export function slowestExposureTime({
  circleOfConfusion,
  focalLength,
  magnification,
  principalSeparation,
  shakeRate,
  stabilisation,
  sidewaysSpeed,
  subjectSpeed,
}: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  const inOneSecond = { focalLength, magnification, principalSeparation, shakeRate, stabilisation, exposureTime: 1 };
  const streak = combinedMotionBlur([
    motionBlurTurningAboutSensor(inOneSecond),
    motionBlurSideways({ magnification, sidewaysSpeed, exposureTime: 1 }),
    motionBlurOfSubject({ magnification, subjectSpeed, exposureTime: 1 }),
  ]);
  if (streak > 0) return circleOfConfusion / streak;
  throw new OutOfRange('stabilisation', stabilisation, 'stops that leave some movement');
}

export const slowestExposureTimeFormula = {
  gives: 'exposure-time',
  from: [
    'circle-of-confusion',
    'focal-length',
    'magnification',
    'principal-separation',
    'shake-rate',
    'stabilisation',
    'sideways-speed',
    'subject-speed',
  ],
  tex: String.raw`\q{exposure-time} = \frac{\q{circle-of-confusion}}{\sqrt{\left(\frac{\left(\q{focal-length}\left(1 + \q{magnification}\right)^2 + \q{magnification}\,\q{principal-separation}\right)\q{shake-rate}}{2^{\q{stabilisation}}}\right)^2 + \left(\q{magnification}\,\q{sideways-speed}\right)^2 + \left(\q{magnification}\,\q{subject-speed}\right)^2}}`,
  evaluate: slowestExposureTime,
  says: 'The worst of the movements sets the time; curing the others gains little. Stabilisation counts as rated, far away; close up it does less.',
  source: 'derived in core/exposure/README.md#slowest',
  checkedBy: ['camera-shake', 'common-practice-exposure'],
  // Principal planes crossed over farther than this would put the subject of the shortest lenses behind the sensor.
  sample: { 'focal-length': [20, 800], 'principal-separation': [-15, 200] },
} as const satisfies Formula<Inputs>;
