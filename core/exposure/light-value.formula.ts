import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'effective-f-number' | 'exposure-time' | 'iso';

/**
 * How much light a correct exposure tells of, a step a stop: the exposure value it would have at ISO 100.
 *
 * LV = log2(100 N_w² / (t S))
 *
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param given.exposureTime *t*, s; above 0
 * @param given.iso *S*, exposure index; above 0
 * @returns *LV*, a pure number of either sign; about 15 in full sunlight.
 * @throws OutOfRange for anything not finite and above zero
 *
 * The exposure is taken as the one a meter asked for.
 * Source: composite tag LightValue of ExifTool 13.59, whose definition was read in Image/ExifTool/Exif.pm. Derived in [README](README.md#stops).
 *
 * @example lightValue({ effectiveFNumber: 16, exposureTime: 0.01, iso: 100 }) // 14.6438...
 */
export function lightValue({ effectiveFNumber, exposureTime, iso }: Named<Inputs>): number {
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('exposure-time', exposureTime);
  requirePositive('iso', iso);
  return Math.log2((100 * effectiveFNumber ** 2) / (exposureTime * iso));
}

export const lightValueFormula = {
  gives: 'light-value',
  from: ['effective-f-number', 'exposure-time', 'iso'],
  tex: String.raw`\q{light-value} = \log_2\frac{100\,\q{effective-f-number}^2}{\q{exposure-time}\,\q{iso}}`,
  evaluate: lightValue,
  says: 'Settings that suit the same light share a light value, whatever the ISO.',
  source: 'ExifTool 13.59, composite tag LightValue',
  checkedBy: [
    'common-practice-exposure',
    'exposure-library',
    'exposure-value-table',
    'library-exif-composites',
    'light-value',
  ],
} as const satisfies Formula<Inputs>;
