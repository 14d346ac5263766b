import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'close-up-power';

/**
 * Where the subject stands before a close-up lens on a lens focused at infinity.
 *
 * w = 1000/Φ, w in mm and Φ in dpt
 *
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @returns *w*, mm, from the close-up lens. The same on every focal length.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens at infinity and a close-up lens that is thin and stands foremost.
 * Source: L. P. Clerc, Photography: Theory and Practice, section 118. Derived in [README](README.md#close-up-lenses).
 *
 * @example workingDistanceOfCloseUpLens({ closeUpPower: 4 }) // 250
 */
export function workingDistanceOfCloseUpLens({ closeUpPower }: Named<Inputs>): number {
  requirePositive('close-up-power', closeUpPower);
  return metre / closeUpPower;
}

export const workingDistanceOfCloseUpLensFormula = {
  gives: 'working-distance',
  from: ['close-up-power'],
  tex: String.raw`\q{working-distance} = \frac{1000}{\q{close-up-power}}`,
  evaluate: workingDistanceOfCloseUpLens,
  says: 'One over the power, in metres: the close-up lens alone decides how near, the camera lens how large.',
  source: 'L. P. Clerc, Photography: Theory and Practice, section 118; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
} as const satisfies Formula<Inputs>;
