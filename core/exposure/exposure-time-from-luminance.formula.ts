import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'reflected-light-constant' | 'luminance' | 'iso';

/**
 * How long to expose what a meter was pointed at.
 *
 * t = N_w² K / (L_v S)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.reflectedLightConstant *K*, of the meter, cd s/m² at ISO 1; above 0
 * @param given.luminance *L_v*, of what the meter is pointed at, cd/m²; above 0
 * @param given.iso *S*, exposure index; above 0
 * @returns *t*, s, that records the metered surface as a mid-tone, be it white or black. With a meter behind the lens nothing is
 *   to be added for extension: it has seen N_w.
 * @throws OutOfRange for anything not finite and above zero
 *
 * The constant is the maker’s choice within the standard’s range (`metering-constants.ts`); the meter knows nothing of what the picture is for.
 * Source: ISO 2720:1974 (from memory); the equation as many handbooks print it. Derived in [README](README.md#metering).
 *
 * @example exposureTimeFromLuminance({ effectiveFNumber: 16, reflectedLightConstant: 12.5, luminance: 3200, iso: 100 }) // 0.01
 */
export function exposureTimeFromLuminance({
  effectiveFNumber,
  reflectedLightConstant,
  luminance,
  iso,
}: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('reflected-light-constant', reflectedLightConstant);
  requirePositive('luminance', luminance);
  requirePositive('iso', iso);
  return (effectiveFNumber ** 2 * reflectedLightConstant) / (luminance * iso);
}

export const exposureTimeFromLuminanceFormula = {
  gives: 'exposure-time',
  from: ['effective-f-number', 'reflected-light-constant', 'luminance', 'iso'],
  tex: String.raw`\q{exposure-time} = \frac{\q{effective-f-number}^2\,\q{reflected-light-constant}}{\q{luminance}\,\q{iso}}`,
  evaluate: exposureTimeFromLuminance,
  says: 'Twice the light or twice the ISO, half the time; a stop down, twice the time.',
  source: 'ISO 2720:1974 (from memory)',
  checkedBy: ['exposure-library', 'metering-constants'],
} as const satisfies Formula<Inputs>;
