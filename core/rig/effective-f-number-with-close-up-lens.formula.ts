import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'f-number' | 'focus-magnification' | 'pupil-magnification';

/**
 * The f-number of the cone at the sensor with any close-up lens on the lens.
 *
 * N_w = N (1 + m₀/P)
 *
 * @param given.fNumber *N*, as marked; f/D at the setting in use where the lens focuses internally; above 0
 * @param given.focusMagnification *m₀*, by the lens's own focusing, 0 or above: not the magnification with the close-up lens
 * @param given.pupilMagnification *P*, above 0
 * @returns *N_w*, whatever the close-up lens and the magnification it gives: nothing behind the lens has moved.
 * @throws OutOfRange for a negative focus magnification, and for anything else not finite and above zero
 *
 * Assumes a close-up lens wide enough not to limit the cone.
 * Source: the cone behind the lens is that without a close-up lens; see [README](README.md#close-up-lenses).
 *
 * @example effectiveFNumberWithCloseUpLens({ fNumber: 8, focusMagnification: 0.15, pupilMagnification: 1.2 }) // 9
 */
export function effectiveFNumberWithCloseUpLens({
  fNumber,
  focusMagnification,
  pupilMagnification,
}: Named<Inputs>): number {
  requirePositive('f-number', fNumber);
  requireNotNegative('focus-magnification', focusMagnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return fNumber * (1 + focusMagnification / pupilMagnification);
}

export const effectiveFNumberWithCloseUpLensFormula = {
  gives: 'effective-f-number',
  from: ['f-number', 'focus-magnification', 'pupil-magnification'],
  tex: String.raw`\q{effective-f-number} = \q{f-number}\left(1 + \frac{\q{focus-magnification}}{\q{pupil-magnification}}\right)`,
  evaluate: effectiveFNumberWithCloseUpLens,
  says: 'A close-up lens costs no light; only the main lens’s own focusing raises the effective f-number.',
  source: 'derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
} as const satisfies Formula<Inputs>;
