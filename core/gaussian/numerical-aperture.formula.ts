import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'effective-f-number';

/**
 * The numerical aperture on the subject's side of a lens focused at a given magnification.
 *
 * NA = m / √(m² + 4 N_w²), the sine of the angle whose tangent is m/(2 N_w)
 *
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above 0
 * @returns *NA*, between 0 and 1: a sine, as engraved on objectives. The tangent m/(2 N_w) is 3.3 % larger at 0.25.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian pupils in air; a lens corrected for the sine condition at high aperture departs from it.
 * Source: derived in [README](README.md#light).
 *
 * @example numericalAperture({ magnification: 1, effectiveFNumber: 4 }) // 0.1240...
 */
export function numericalAperture({ magnification, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('effective-f-number', effectiveFNumber);
  return magnification / Math.hypot(magnification, 2 * effectiveFNumber);
}

export const numericalApertureFormula = {
  gives: 'numerical-aperture',
  from: ['magnification', 'effective-f-number'],
  tex: String.raw`\q{numerical-aperture} = \frac{\q{magnification}}{\sqrt{\q{magnification}^2 + 4\,\q{effective-f-number}^2}}`,
  evaluate: numericalAperture,
  says: 'The same cone of light, told from the subject’s side and as a sine.',
  source: 'derived in core/gaussian/README.md#light',
  checkedBy: ['working-f-number'],
} as const satisfies Formula<Inputs>;
