import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'numerical-aperture' | 'f-number';

/**
 * The f-number of the cone at the sensor behind a microscope objective on a camera lens.
 *
 * N_w = max(m/(2 NA), N)
 *
 * @param given.magnification *m*, on the sensor, above 0
 * @param given.numericalAperture *NA*, as engraved, above 0 and below 1, in air
 * @param given.fNumber *N*, as marked on the lens behind the objective, above 0
 * @returns *N_w*: the cone of the objective, unless the lens behind is closed so far that it cuts the beam
 * @throws OutOfRange for values out of range
 *
 * Assumes the lens behind at infinity, and an objective that keeps Abbe's sine condition.
 * Source: derived in [README](README.md#objectives).
 *
 * @example effectiveFNumberOfObjectiveOnLens({ magnification: 10, numericalAperture: 0.25, fNumber: 8 }) // 20
 */
export function effectiveFNumberOfObjectiveOnLens({
  magnification,
  numericalAperture,
  fNumber,
}: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  if (!(numericalAperture > 0 && numericalAperture < 1)) {
    throw new OutOfRange('numerical-aperture', numericalAperture, 'above 0 and below 1, in air');
  }
  requirePositive('f-number', fNumber);
  return Math.max(magnification / (2 * numericalAperture), fNumber);
}

export const effectiveFNumberOfObjectiveOnLensFormula = {
  gives: 'effective-f-number',
  from: ['magnification', 'numerical-aperture', 'f-number'],
  tex: String.raw`\q{effective-f-number} = \max\left(\frac{\q{magnification}}{2\,\q{numerical-aperture}},\; \q{f-number}\right)`,
  evaluate: effectiveFNumberOfObjectiveOnLens,
  says: 'The objective makes the cone, unless the lens behind it is closed farther.',
  source: 'Abbe’s sine condition; derived in core/rig/README.md#objectives',
  checkedBy: ['coupled-lens-matrices', 'microscope-depth'],
} as const satisfies Formula<Inputs>;
