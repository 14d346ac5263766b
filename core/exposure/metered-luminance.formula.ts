import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'reflected-light-constant' | 'exposure-time' | 'iso';

/**
 * How bright a surface is, told from the exposure that a meter asks for.
 *
 * L_v = N_w² K / (t S)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.reflectedLightConstant *K*, of the meter, cd s/m² at ISO 1; above 0
 * @param given.exposureTime *t*, that the meter asks for, s; above 0
 * @param given.iso *S*, exposure index; above 0
 * @returns *L_v*, cd/m², as far as the meter’s constant is known: a tenth of a stop is 7 %.
 * @throws OutOfRange for anything not finite and above zero
 *
 * The constant is the maker’s choice within the standard’s range (`metering-constants.ts`); the meter knows nothing of what the picture is for.
 * Source: ISO 2720:1974 (from memory), solved for the luminance. Derived in [README](README.md#metering).
 *
 * @example meteredLuminance({ effectiveFNumber: 16, reflectedLightConstant: 12.5, exposureTime: 0.01, iso: 100 }) // 3200
 */
export function meteredLuminance({
  effectiveFNumber,
  reflectedLightConstant,
  exposureTime,
  iso,
}: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('reflected-light-constant', reflectedLightConstant);
  requirePositive('exposure-time', exposureTime);
  requirePositive('iso', iso);
  return (effectiveFNumber ** 2 * reflectedLightConstant) / (exposureTime * iso);
}

export const meteredLuminanceFormula = {
  gives: 'luminance',
  from: ['effective-f-number', 'reflected-light-constant', 'exposure-time', 'iso'],
  tex: String.raw`\q{luminance} = \frac{\q{effective-f-number}^2\,\q{reflected-light-constant}}{\q{exposure-time}\,\q{iso}}`,
  evaluate: meteredLuminance,
  says: 'From any metered exposure you can work out how bright the subject is.',
  source: 'ISO 2720:1974 (from memory)',
  checkedBy: ['exposure-library', 'exposure-value-table', 'metering-constants'],
} as const satisfies Formula<Inputs>;
