import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs =
  'focal-length' | 'magnification' | 'principal-separation' | 'shake-rate' | 'exposure-time' | 'stabilisation';

/**
 * The streak on the sensor when a camera turns about the middle of its sensor while the shutter is open.
 *
 * blur = [f (1 + m)² + m HH′] ω t / 2^stabilisation
 *
 * @param given.focalLength *f*, at the focus setting in use, mm; above 0
 * @param given.magnification *m*, in the sharp plane; 0 or above: 0 far away
 * @param given.principalSeparation *HH′*, mm; of either sign
 * @param given.shakeRate *ω*, rad/s; 0 or above: 0 on a tripod
 * @param given.exposureTime *t*, s; above 0
 * @param given.stabilisation stops, 0 or above; 0 without it. As rated, which is for a subject far away: see below
 * @returns mm on the sensor, in the sharp plane near the axis.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a stabilisation below zero, and for principal
 *   planes so far crossed over that the subject would lie behind the sensor
 *
 * Assumes a turn that is small and steady while the shutter is open; a tremble that turns back within the time leaves less.
 * Stabilisation is taken to divide the whole turn, which is what it is rated for far away. Close up it does less: one that knows neither *m*
 * nor about what the camera turns takes away *f ω t* and leaves the rest, three quarters of it at life size; count the stops there as an upper bound.
 * Source: m L ω t, with L from sensor to subject. Derived in [README](README.md#turning).
 *
 * @example motionBlurTurningAboutSensor({ focalLength: 100, magnification: 1, principalSeparation: 0, shakeRate: 0.01, exposureTime: 0.01, stabilisation: 0 }) // 0.04
 */
export function motionBlurTurningAboutSensor({
  focalLength,
  magnification,
  principalSeparation,
  shakeRate,
  exposureTime,
  stabilisation,
}: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requireNotNegative('magnification', magnification);
  requireFinite('principal-separation', principalSeparation);
  requireNotNegative('shake-rate', shakeRate);
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('stabilisation', stabilisation);
  const reach = focalLength * (1 + magnification) ** 2 + magnification * principalSeparation;
  if (!(reach > 0))
    throw new OutOfRange('principal-separation', principalSeparation, 'one that leaves the subject in front');
  return (reach * shakeRate * exposureTime) / 2 ** stabilisation;
}

export const motionBlurTurningAboutSensorFormula = {
  gives: 'motion-blur',
  from: ['focal-length', 'magnification', 'principal-separation', 'shake-rate', 'exposure-time', 'stabilisation'],
  tex: String.raw`\q{motion-blur} = \frac{\left(\q{focal-length}\left(1 + \q{magnification}\right)^2 + \q{magnification}\,\q{principal-separation}\right)\q{shake-rate}\,\q{exposure-time}}{2^{\q{stabilisation}}}`,
  evaluate: motionBlurTurningAboutSensor,
  says: 'At life size the same tremble smears four times as far as on a distant view.',
  source: 'derived in core/exposure/README.md#turning',
  checkedBy: ['pupils-in-matrices', 'turned-cameras-in-matrices'],
  // Principal planes crossed over farther than this would put the subject of the shortest lenses behind the sensor.
  sample: { 'focal-length': [20, 800], 'principal-separation': [-15, 200] },
} as const satisfies Formula<Inputs>;
