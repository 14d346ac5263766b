import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'reflected-light-constant' | 'luminance' | 'exposure-time';

/**
 * The ISO that a picture needs once f-number and time are spoken for.
 *
 * S = N_w² K / (L_v t)
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.reflectedLightConstant *K*, of the meter, cd s/m² at ISO 1; above 0
 * @param given.luminance *L_v*, of what the meter is pointed at, cd/m²; above 0
 * @param given.exposureTime *t*, the longest that nothing moves in, s; above 0
 * @returns *S*, a pure number that few cameras have exactly: take the next mark. What it costs is noise (`signal-to-noise`).
 * @throws OutOfRange for anything not finite and above zero
 *
 * The constant is the maker’s choice within the standard’s range (`metering-constants.ts`); the meter knows nothing of what the picture is for.
 * Source: ISO 2720:1974 (from memory), solved for the speed. Derived in [README](README.md#metering).
 *
 * @example isoFromLuminance({ effectiveFNumber: 16, reflectedLightConstant: 12.5, luminance: 3200, exposureTime: 0.01 }) // 100
 */
export function isoFromLuminance({
  effectiveFNumber,
  reflectedLightConstant,
  luminance,
  exposureTime,
}: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('reflected-light-constant', reflectedLightConstant);
  requirePositive('luminance', luminance);
  requirePositive('exposure-time', exposureTime);
  return (effectiveFNumber ** 2 * reflectedLightConstant) / (luminance * exposureTime);
}

export const isoFromLuminanceFormula = {
  gives: 'iso',
  from: ['effective-f-number', 'reflected-light-constant', 'luminance', 'exposure-time'],
  tex: String.raw`\q{iso} = \frac{\q{effective-f-number}^2\,\q{reflected-light-constant}}{\q{luminance}\,\q{exposure-time}}`,
  evaluate: isoFromLuminance,
  says: 'When depth fixes the aperture and sharpness the time, ISO must make up the rest.',
  source: 'ISO 2720:1974 (from memory)',
  checkedBy: ['exposure-library', 'metering-constants'],
} as const satisfies Formula<Inputs>;
