import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs =
  'focal-length' | 'magnification' | 'pupil-magnification' | 'shake-rate' | 'exposure-time' | 'stabilisation';

/**
 * The streak on the sensor when a camera turns about the middle of its entrance pupil while the shutter is open.
 *
 * blur = f (1 + m/P) ω t / 2^stabilisation
 *
 * @param given.focalLength *f*, at the focus setting in use, mm; above 0
 * @param given.magnification *m*, in the sharp plane; 0 or above: 0 far away
 * @param given.pupilMagnification *P*, the lens as it stands; above 0
 * @param given.shakeRate *ω*, rad/s; 0 or above: 0 on a tripod
 * @param given.exposureTime *t*, s; above 0
 * @param given.stabilisation stops, 0 or above; 0 without it. As rated, which is for a subject far away: see below
 * @returns mm on the sensor. Less than on turning about the sensor only where P > 1/(2 + m), for principal planes that coincide.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, and for a stabilisation below zero
 *
 * Assumes a turn that is small and steady while the shutter is open; a tremble that turns back within the time leaves less.
 * Stabilisation is taken to divide the whole turn, which is what it is rated for far away. Close up it does less: one that knows neither *m*
 * nor about what the camera turns takes away *f ω t* and leaves the rest, half of it at life size where P = 1; count the stops there as an upper bound.
 * Source: m u ω t, with u from entrance pupil to subject. Derived in [README](README.md#turning).
 *
 * @example motionBlurTurningAboutPupil({ focalLength: 100, magnification: 1, pupilMagnification: 1, shakeRate: 0.01, exposureTime: 0.01, stabilisation: 0 }) // 0.02
 */
export function motionBlurTurningAboutPupil({
  focalLength,
  magnification,
  pupilMagnification,
  shakeRate,
  exposureTime,
  stabilisation,
}: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  requireNotNegative('shake-rate', shakeRate);
  requirePositive('exposure-time', exposureTime);
  requireNotNegative('stabilisation', stabilisation);
  return (focalLength * (1 + magnification / pupilMagnification) * shakeRate * exposureTime) / 2 ** stabilisation;
}

export const motionBlurTurningAboutPupilFormula = {
  gives: 'motion-blur',
  from: ['focal-length', 'magnification', 'pupil-magnification', 'shake-rate', 'exposure-time', 'stabilisation'],
  tex: String.raw`\q{motion-blur} = \frac{\q{focal-length}\left(1 + \frac{\q{magnification}}{\q{pupil-magnification}}\right)\q{shake-rate}\,\q{exposure-time}}{2^{\q{stabilisation}}}`,
  evaluate: motionBlurTurningAboutPupil,
  says: 'A hand under the lens moves the point about which the camera turns, and usually makes the blur smaller.',
  source: 'derived in core/exposure/README.md#turning',
  checkedBy: ['camera-shake', 'pupils-in-matrices', 'star-trails', 'turned-cameras-in-matrices'],
} as const satisfies Formula<Inputs>;
