import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'pupil-magnification' | 'focal-length' | 'f-number';

/**
 * The diameter of the aperture as the sensor sees it.
 *
 * D' = P f/N
 *
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @param given.focalLength *f*, mm, above 0; at infinity focus if *N* is the marked number
 * @param given.fNumber *N*, above 0
 * @returns *D'*, mm. Neither the iris itself nor what the subject sees of it: the glass behind it shows it enlarged or reduced.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens that keeps *f*, *D* and *P* while focusing, the right way round.
 * Source: definition of the pupil magnification. See [README](README.md#pupils).
 *
 * @example exitPupil({ pupilMagnification: 1.5, focalLength: 28, fNumber: 7 }) // 6
 */
export function exitPupil({ pupilMagnification, focalLength, fNumber }: Named<Inputs>): number {
  requirePositive('pupil-magnification', pupilMagnification);
  requirePositive('focal-length', focalLength);
  requirePositive('f-number', fNumber);
  return (pupilMagnification * focalLength) / fNumber;
}

export const exitPupilFormula = {
  gives: 'exit-pupil',
  from: ['pupil-magnification', 'focal-length', 'f-number'],
  tex: String.raw`\q{exit-pupil} = \q{pupil-magnification}\,\frac{\q{focal-length}}{\q{f-number}}`,
  evaluate: exitPupil,
  says: 'From behind, the opening looks P times as wide as from the front.',
  source: 'definition of the pupil magnification',
  checkedBy: ['marks-in-matrices'],
} as const satisfies Formula<Inputs>;
