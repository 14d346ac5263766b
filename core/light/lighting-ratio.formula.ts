import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'lit-side.illuminance' | 'shadow-side.illuminance';

/**
 * How many times as bright the lit side of something round is as its shadow side.
 *
 * ratio = E_lit/E_shadow
 *
 * @param given.litSideIlluminance *E* on the lit side, of all lights together, lx, above 0
 * @param given.shadowSideIlluminance *E* on the shadow side, of all lights together, lx, 0 or above
 * @returns 1 where both sides are alike; `Infinity` where no light reaches the shadow side
 * @throws OutOfRange for anything not finite, a lit side that is dark, and a negative illuminance
 *
 * What is lit by a main light and by a fill light that reaches both sides has (E_main + E_fill)/E_fill.
 * Source: the usual definition, as encyclopedias have it under 'lighting ratio'.
 *
 * @example lightingRatio({ litSideIlluminance: 300, shadowSideIlluminance: 100 }) // 3
 */
export function lightingRatio({ litSideIlluminance, shadowSideIlluminance }: Named<Inputs>): number {
  requirePositive('lit-side.illuminance', litSideIlluminance);
  requireNotNegative('shadow-side.illuminance', shadowSideIlluminance);
  // Minus zero is as dark as zero.
  return litSideIlluminance / (shadowSideIlluminance || 0);
}

export const lightingRatioFormula = {
  gives: 'lighting-ratio',
  from: ['lit-side.illuminance', 'shadow-side.illuminance'],
  tex: String.raw`\q{lighting-ratio} = \frac{\q{lit-side.illuminance}}{\q{shadow-side.illuminance}}`,
  evaluate: lightingRatio,
  says: 'Three to one is a stop and a half.',
  source: 'the usual definition of a lighting ratio',
  checkedBy: ['lights-round-a-ball'],
} as const satisfies Formula<Inputs>;
