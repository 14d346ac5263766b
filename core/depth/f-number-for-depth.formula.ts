import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-depth' | 'circle-of-confusion' | 'pupil-magnification';

/**
 * The f-number to be set so that a subject is sharp through all of its depth, in the form for close-ups.
 *
 * N = m² Z / (2c (1 + m/P))
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectDepth *Z*, nearest to farthest part, mm; 0 or above
 * @param given.circleOfConfusion *c*, on the sensor, mm; above 0
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter; above 0
 * @returns *N*, as marked; 0 for a subject without depth, which any f-number shows sharp. Not whether the iris closes so far, nor whether
 *   diffraction leaves anything sharp there.
 * @throws OutOfRange for a depth below zero, what must be above zero and is not, or anything not finite
 *
 * Assumes light in straight lines and a depth small beside the distance to the entrance pupil.
 * Source: the close-up form solved for N, derived in [README](README.md#close-up).
 *
 * @example fNumberForDepth({ magnification: 1, subjectDepth: 0.8, circleOfConfusion: 0.02, pupilMagnification: 1 }) // 10
 */
export function fNumberForDepth(given: Named<Inputs>): number {
  const magnification = requirePositive('magnification', given.magnification);
  const subjectDepth = requireNotNegative('subject-depth', given.subjectDepth);
  const circleOfConfusion = requirePositive('circle-of-confusion', given.circleOfConfusion);
  const pupilMagnification = requirePositive('pupil-magnification', given.pupilMagnification);
  return (magnification ** 2 * subjectDepth) / (2 * circleOfConfusion * (1 + magnification / pupilMagnification));
}

export const fNumberForDepthFormula = {
  gives: 'f-number',
  from: ['magnification', 'subject-depth', 'circle-of-confusion', 'pupil-magnification'],
  tex: String.raw`\q{f-number} = \frac{\q{magnification}^2\,\q{subject-depth}}{2\,\q{circle-of-confusion}\left(1 + \frac{\q{magnification}}{\q{pupil-magnification}}\right)}`,
  evaluate: fNumberForDepth,
  says: 'Twice the depth, twice the f-number, and a quarter of the light.',
  source: 'derived in core/depth/README.md#close-up',
  checkedBy: ['leans-turns-and-keepers'],
} as const satisfies Formula<Inputs>;
