import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'flash.effective-f-number';

/**
 * By how many stops a flash alone leaves the picture too dark.
 *
 * flash underexposure = 2 log2(N_w / N_w,flash)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.flashEffectiveFNumber the *N_w* that this flash exposes correctly, by its guide number or as a flash meter shows it; above 0
 * @returns stops; below zero where the flash gives too much
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: light goes as 1/N_w², and a stop is a factor of two in light. Derived in [README](README.md#flash).
 *
 * @example flashUnderexposure({ effectiveFNumber: 22, flashEffectiveFNumber: 11 }) // 2
 */
export function flashUnderexposure({ effectiveFNumber, flashEffectiveFNumber }: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('flash.effective-f-number', flashEffectiveFNumber);
  return 2 * Math.log2(effectiveFNumber / flashEffectiveFNumber);
}

export const flashUnderexposureFormula = {
  gives: 'flash-underexposure',
  from: ['effective-f-number', 'flash.effective-f-number'],
  tex: String.raw`\q{flash-underexposure} = 2\log_2\frac{\q{effective-f-number}}{\q{flash.effective-f-number}}`,
  evaluate: flashUnderexposure,
  says: 'Each doubling of the f-number over what the flash suits makes its part two stops darker.',
  source: 'definition of a stop, core/exposure/README.md#flash',
  checkedBy: ['flash-by-other-routes', 'flash-in-stops'],
} as const satisfies Formula<Inputs>;
