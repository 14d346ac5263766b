import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'f-number' | 'magnification' | 'pupil-magnification';

/**
 * The f-number of the cone that reaches the sensor from a lens turned round.
 *
 * N_w = N (m + 1/P)
 *
 * @param given.fNumber *N*, as marked, at infinity, the lens the right way round; above 0
 * @param given.magnification *m*, above 0
 * @param given.pupilMagnification *P*, of the lens the right way round; above 0
 * @returns *N_w*. Putting 1/P for P in N (1 + m/P) is not enough: the old exit pupil faces the subject, so the marked *N* becomes *N/P* with it.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens that keeps f/D while focusing, and that its own stop limits the cone.
 * Source: N_w = N' (1 + m/P') with N' = N/P and P' = 1/P; derived in [README](README.md#a-lens-turned-round).
 *
 * @example effectiveFNumberOfReversedLens({ fNumber: 8, magnification: 2, pupilMagnification: 1.6 }) // 21
 */
export function effectiveFNumberOfReversedLens({ fNumber, magnification, pupilMagnification }: Named<Inputs>): number {
  requirePositive('f-number', fNumber);
  requirePositive('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return fNumber * (magnification + 1 / pupilMagnification);
}

export const effectiveFNumberOfReversedLensFormula = {
  gives: 'effective-f-number',
  from: ['f-number', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{effective-f-number} = \q{f-number}\left(\q{magnification} + \frac{1}{\q{pupil-magnification}}\right)`,
  evaluate: effectiveFNumberOfReversedLens,
  says: 'Reversed, a lens begins at N/P, below the mark for a wide-angle lens and above it for a telephoto; each unit of magnification adds N.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-cone-in-print', 'reversed-lens-matrices', 'reversed-surface-by-surface'],
} as const satisfies Formula<Inputs>;
