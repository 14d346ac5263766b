import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'main-lens.f-number' | 'magnification' | 'reversed-lens.f-number';

/**
 * The f-number of the cone at the sensor behind two lenses, one turned round on the other.
 *
 * N_w = max(N_main, m N_reversed)
 *
 * @param given.mainLensFNumber *N*, as marked on the lens on the camera, above 0
 * @param given.magnification *m* = f_main/f_reversed, above 0
 * @param given.reversedLensFNumber *N*, as marked on the lens turned round, above 0
 * @returns *N_w*: the smaller of the two openings, seen from the sensor, makes the cone. Neither pupil magnification takes part.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes both lenses at infinity.
 * Source: parallel light runs between them, f_main long cones stand on pupils f/N wide; derived in [README](README.md#coupled-lenses).
 *
 * @example effectiveFNumberOfCoupledLenses({ mainLensFNumber: 8, magnification: 4, reversedLensFNumber: 1.8 }) // 8
 */
export function effectiveFNumberOfCoupledLenses({
  mainLensFNumber,
  magnification,
  reversedLensFNumber,
}: Named<Inputs>): number {
  requirePositive('main-lens.f-number', mainLensFNumber);
  requirePositive('magnification', magnification);
  requirePositive('reversed-lens.f-number', reversedLensFNumber);
  return Math.max(mainLensFNumber, magnification * reversedLensFNumber);
}

export const effectiveFNumberOfCoupledLensesFormula = {
  gives: 'effective-f-number',
  from: ['main-lens.f-number', 'magnification', 'reversed-lens.f-number'],
  tex: String.raw`\q{effective-f-number} = \max\left(\q{main-lens.f-number},\; \q{magnification}\,\q{reversed-lens.f-number}\right)`,
  evaluate: effectiveFNumberOfCoupledLenses,
  says: 'Between coupled lenses light runs side by side: the smaller of the two openings decides.',
  source: 'derived in core/rig/README.md#coupled-lenses',
  checkedBy: ['coupled-lens-matrices', 'coupled-lenses-in-practice'],
} as const satisfies Formula<Inputs>;
