import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'main-light.illuminance' | 'fill-light.illuminance';

/**
 * By how many stops one light is brighter on the subject than another.
 *
 * difference = log2(E_main/E_fill)
 *
 * @param given.mainLightIlluminance *E* from the one light alone, lx, above 0
 * @param given.fillLightIlluminance *E* from the other alone, lx, above 0
 * @returns stops, below zero where the second is the brighter: 1 for a ratio of 2:1, 2 for 4:1
 * @throws OutOfRange for anything not finite and above zero
 *
 * Each light is measured alone. Where both reach the lit side, the side that has the second alone is darker by log2(1 + E_main/E_fill).
 * Source: the definition of a stop. Derived in [README](README.md#stops).
 *
 * @example lightingDifference({ mainLightIlluminance: 800, fillLightIlluminance: 200 }) // 2
 */
export function lightingDifference({ mainLightIlluminance, fillLightIlluminance }: Named<Inputs>): number {
  requirePositive('main-light.illuminance', mainLightIlluminance);
  requirePositive('fill-light.illuminance', fillLightIlluminance);
  return Math.log2(mainLightIlluminance / fillLightIlluminance);
}

export const lightingDifferenceFormula = {
  gives: 'lighting-difference',
  from: ['main-light.illuminance', 'fill-light.illuminance'],
  tex: String.raw`\q{lighting-difference} = \log_2\frac{\q{main-light.illuminance}}{\q{fill-light.illuminance}}`,
  evaluate: lightingDifference,
  says: 'Twice the light is one stop, four times two.',
  source: 'definition of a stop, core/exposure/README.md#stops',
  checkedBy: ['angles-tanks-and-lights'],
} as const satisfies Formula<Inputs>;
