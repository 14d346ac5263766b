import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'exposure-time';

/**
 * Aperture and time in one number, a step a stop.
 *
 * EV = log2(N_w² / t)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.exposureTime *t*, s; above 0
 * @returns *EV*, a pure number of either sign; 0 for f/1 and 1 s. It names settings, not light: the light that suits them is the
 *   light value, which knows the ISO.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Handbooks put the marked N here: with the subject far away the two are the same.
 * Source: Additive system of photographic exposure, ASA PH2.5-1960, EV = A_v + T_v (the standard from memory). Derived in [README](README.md#stops).
 *
 * @example exposureValue({ effectiveFNumber: 8, exposureTime: 1 / 64 }) // 12
 */
export function exposureValue({ effectiveFNumber, exposureTime }: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('exposure-time', exposureTime);
  return Math.log2(effectiveFNumber ** 2 / exposureTime);
}

export const exposureValueFormula = {
  gives: 'exposure-value',
  from: ['effective-f-number', 'exposure-time'],
  tex: String.raw`\q{exposure-value} = \log_2\frac{\q{effective-f-number}^2}{\q{exposure-time}}`,
  evaluate: exposureValue,
  says: 'Settings of the same exposure value let the same light in.',
  source: 'ASA PH2.5-1960 (from memory)',
  checkedBy: ['exposure-value-table', 'nominal-series'],
} as const satisfies Formula<Inputs>;
