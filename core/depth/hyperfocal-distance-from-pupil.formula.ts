import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'f-number' | 'circle-of-confusion' | 'pupil-magnification';

/**
 * The hyperfocal distance counted from the entrance pupil, from where depth of field is seen.
 *
 * u = f²/(N c) + f/P
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.fNumber *N*, f over entrance pupil diameter, above 0
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @returns *u*, mm from the entrance pupil, at which the far limit becomes infinite
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes the lens the right way round.
 * Source: derived in [README](README.md#hyperfocal).
 *
 * @example hyperfocalDistanceFromPupil({ focalLength: 50, fNumber: 10, circleOfConfusion: 0.025, pupilMagnification: 0.5 }) // 10100
 */
export function hyperfocalDistanceFromPupil(given: Named<Inputs>): number {
  const { focalLength, fNumber, circleOfConfusion, pupilMagnification } = given;
  requirePositive('focal-length', focalLength);
  requirePositive('f-number', fNumber);
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('pupil-magnification', pupilMagnification);
  return focalLength ** 2 / (fNumber * circleOfConfusion) + focalLength / pupilMagnification;
}

export const hyperfocalDistanceFromPupilFormula = {
  gives: 'entrance-pupil-distance',
  from: ['focal-length', 'f-number', 'circle-of-confusion', 'pupil-magnification'],
  tex: String.raw`\q{entrance-pupil-distance} = \frac{\q{focal-length}^2}{\q{f-number}\,\q{circle-of-confusion}} + \frac{\q{focal-length}}{\q{pupil-magnification}}`,
  evaluate: hyperfocalDistanceFromPupil,
  says: 'With the focus at this distance from the entrance pupil, sharpness just reaches infinity.',
  source: 'derived in core/depth/README.md#hyperfocal',
  checkedBy: ['pupils-in-matrices'],
} as const satisfies Formula<Inputs>;
