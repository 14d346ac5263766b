import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'main-lens.focal-length' | 'reversed-lens.focal-length';

/**
 * What a second lens gives, reversed on the front of a first, both at infinity.
 *
 * m = f_main/f_reversed
 *
 * @param given.mainLensFocalLength *f* of the lens on the camera, mm, above 0
 * @param given.reversedLensFocalLength *f* of the lens turned round on its front, mm, above 0
 * @returns *m*, whatever the gap between them. How much of the frame is lit does depend on the gap.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes both lenses at infinity.
 * Source: the reversed lens is a close-up lens of its focal length; derived in [README](README.md#coupled-lenses).
 *
 * @example magnificationOfCoupledLenses({ mainLensFocalLength: 200, reversedLensFocalLength: 50 }) // 4
 */
export function magnificationOfCoupledLenses({ mainLensFocalLength, reversedLensFocalLength }: Named<Inputs>): number {
  requirePositive('main-lens.focal-length', mainLensFocalLength);
  requirePositive('reversed-lens.focal-length', reversedLensFocalLength);
  return mainLensFocalLength / reversedLensFocalLength;
}

export const magnificationOfCoupledLensesFormula = {
  gives: 'magnification',
  from: ['main-lens.focal-length', 'reversed-lens.focal-length'],
  tex: String.raw`\q{magnification} = \frac{\q{main-lens.focal-length}}{\q{reversed-lens.focal-length}}`,
  evaluate: magnificationOfCoupledLenses,
  says: 'One lens turns the light of the subject parallel, the other makes a picture of it: the long focal length divided by the short.',
  source: 'derived in core/rig/README.md#coupled-lenses',
  checkedBy: ['coupled-lens-matrices', 'coupled-lenses-in-practice'],
} as const satisfies Formula<Inputs>;
