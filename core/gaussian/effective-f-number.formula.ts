import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'f-number' | 'magnification' | 'pupil-magnification';

/**
 * The f-number of the cone of light that reaches the sensor, for a lens alone, the right way round.
 *
 * N_w = N (1 + m/P)
 *
 * @param given.fNumber *N*, as marked at infinity; f/D at the setting in use where the lens focuses internally; above 0
 * @param given.magnification *m*, image over subject size; 0 or above: 0 far away
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter; above 0
 * @returns *N_w*, a pure number. Not the marked number to set, and not for a lens turned round (see `rig`).
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian optics in air and that the lens's own stop limits the cone.
 * Source: Greivenkamp, Field Guide to Geometrical Optics (SPIE FG01, 2004), p. 29, as Wikipedia, Numerical aperture, quotes it. Derived in [README](README.md#pupils).
 *
 * @example effectiveFNumber({ fNumber: 8, magnification: 1, pupilMagnification: 1 }) // 16
 */
export function effectiveFNumber({ fNumber, magnification, pupilMagnification }: Named<Inputs>): number {
  requirePositive('f-number', fNumber);
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return fNumber * (1 + magnification / pupilMagnification);
}

export const effectiveFNumberFormula = {
  gives: 'effective-f-number',
  from: ['f-number', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{effective-f-number} = \q{f-number}\left(1 + \frac{\q{magnification}}{\q{pupil-magnification}}\right)`,
  evaluate: effectiveFNumber,
  says: 'The nearer the subject, the less light reaches the sensor: the f-number that counts grows with magnification.',
  source: 'Greivenkamp, Field Guide to Geometrical Optics, p. 29, as quoted by Wikipedia, Numerical aperture',
  checkedBy: [
    'common-practice',
    'contrast-through-depth',
    'depth-with-pupils',
    'exposure-increase',
    'hand-meters-close-up',
    'pupils-in-matrices',
    'reversed-cone-in-print',
    'working-f-number',
  ],
} as const satisfies Formula<Inputs>;
