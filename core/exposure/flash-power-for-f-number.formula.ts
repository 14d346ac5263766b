import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'guide-number' | 'iso' | 'flash-distance' | 'effective-f-number';

/**
 * The share of its power that a flash must give.
 *
 * power = (N_w d / GN)² · 100/S, with d in metres
 *
 * @param given.guideNumber *GN*, at ISO 100 and full power, m; above 0
 * @param given.iso *S*, exposure index; above 0
 * @param given.flashDistance *d*, flash head to subject, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @returns a share of full power; above 1 where the flash is too weak, by log2 of it in stops. Few heads go below 1/128.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a flash that is small against its distance, as `effective-f-number-from-guide-number` does.
 * Source: the guide number’s equation, solved for the power. Derived in [README](README.md#flash).
 *
 * @example flashPowerForFNumber({ guideNumber: 14, iso: 100, flashDistance: 250, effectiveFNumber: 28 }) // 0.25
 */
export function flashPowerForFNumber({ guideNumber, iso, flashDistance, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('guide-number', guideNumber);
  requirePositive('iso', iso);
  requirePositive('flash-distance', flashDistance);
  requirePositive('effective-f-number', effectiveFNumber);
  return ((effectiveFNumber * (flashDistance / metre)) / guideNumber) ** 2 * (100 / iso);
}

export const flashPowerForFNumberFormula = {
  gives: 'flash-power',
  from: ['guide-number', 'iso', 'flash-distance', 'effective-f-number'],
  tex: String.raw`\q{flash-power} = \left(\frac{\q{effective-f-number}\,\q{flash-distance}/1000}{\q{guide-number}}\right)^2\frac{100}{\q{iso}}`,
  metres: 'flash-distance',
  evaluate: flashPowerForFNumber,
  says: 'Near the subject a small part of the power is enough, and a shorter flash.',
  source: 'derived in core/exposure/README.md#flash',
  checkedBy: ['guide-numbers'],
} as const satisfies Formula<Inputs>;
