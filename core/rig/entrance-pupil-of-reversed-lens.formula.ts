import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'pupil-magnification' | 'focal-length' | 'f-number';

/**
 * The diameter of the aperture that the subject sees in a lens turned round.
 *
 * D = P f/N
 *
 * @param given.pupilMagnification *P*, of the lens the right way round; above 0
 * @param given.focalLength *f*, mm, above 0
 * @param given.fNumber *N*, as marked; above 0
 * @returns *D*, mm: what was the exit pupil.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens that keeps f/D while focusing.
 * Source: definition of *P*; see [README](README.md#a-lens-turned-round).
 *
 * @example entrancePupilOfReversedLens({ pupilMagnification: 1.6, focalLength: 28, fNumber: 8 }) // 5.6
 */
export function entrancePupilOfReversedLens({ pupilMagnification, focalLength, fNumber }: Named<Inputs>): number {
  requirePositive('pupil-magnification', pupilMagnification);
  requirePositive('focal-length', focalLength);
  requirePositive('f-number', fNumber);
  return (pupilMagnification * focalLength) / fNumber;
}

export const entrancePupilOfReversedLensFormula = {
  gives: 'entrance-pupil',
  from: ['pupil-magnification', 'focal-length', 'f-number'],
  tex: String.raw`\q{entrance-pupil} = \frac{\q{pupil-magnification}\,\q{focal-length}}{\q{f-number}}`,
  evaluate: entrancePupilOfReversedLens,
  says: 'Reversed, the lens shows the subject the pupil that used to face the sensor.',
  source: 'definition of P; see core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-lens-matrices', 'reversed-surface-by-surface'],
} as const satisfies Formula<Inputs>;
