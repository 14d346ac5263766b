import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'effective-f-number';

/**
 * The numerical aperture on the subject's side of a lens focused at a given magnification.
 *
 * NA = m/(2 N_w)
 *
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor, above m/2: no cone in air is wider
 * @returns *NA*, below 1: the sine of the half angle of the cone, as engraved on objectives. Its tangent is 3.3 % larger at 0.25.
 * @throws OutOfRange for anything not finite and above zero, and for a cone at the sensor that no cone in air could have made
 *
 * Assumes a lens corrected for the sine condition, in air: then m is the sine on the subject's side over that at the sensor, and
 * 1/(2 N_w) is one. The core has this one convention: `effectiveFNumberOfObjective` is the way back.
 * Source: Abbe's sine condition; OpenStax, College Physics 2e, section 26.4, f/# ≈ 1/(2 NA). Derived in [README](README.md#light).
 *
 * @example numericalAperture({ magnification: 1, effectiveFNumber: 4 }) // 0.125
 */
export function numericalAperture({ magnification, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('effective-f-number', effectiveFNumber);
  const aperture = magnification / (2 * effectiveFNumber);
  if (!(aperture < 1)) {
    throw new OutOfRange('effective-f-number', effectiveFNumber, 'above half the magnification: a cone in air');
  }
  return aperture;
}

export const numericalApertureFormula = {
  gives: 'numerical-aperture',
  from: ['magnification', 'effective-f-number'],
  tex: String.raw`\q{numerical-aperture} = \frac{\q{magnification}}{2\,\q{effective-f-number}}`,
  evaluate: numericalAperture,
  says: 'The same cone of light, described from the subject’s side and by the sine of its half angle.',
  source: 'Abbe’s sine condition; OpenStax, College Physics 2e, section 26.4',
  checkedBy: ['working-f-number'],
  // At half the magnification the cone in front of the lens would be a flat sheet.
  sample: { 'effective-f-number': [10.1, 1000] },
} as const satisfies Formula<Inputs>;
