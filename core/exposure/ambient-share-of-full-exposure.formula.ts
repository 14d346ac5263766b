import { OutOfRange, requireFinite } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'ambient-underexposure';

/**
 * What the light already there gives of a full exposure by itself, whatever a flash adds.
 *
 * share of a full exposure = 2^(−shortfall)
 *
 * @param given.ambientUnderexposure stops by which it falls short of a full exposure at these settings, of either sign
 * @returns a share, above 1 where it overexposes by itself. A flash that is to fill up the rest has to give 1 less this; of what is recorded with a
 *   flash that gives a full exposure as well, it is `ambientShare`.
 * @throws OutOfRange for a shortfall that is not finite, or an overexposure beyond counting
 *
 * Source: the definition of a stop. Derived in [README](README.md#ambient).
 *
 * @example ambientShareOfFullExposure({ ambientUnderexposure: 3 }) // 0.125
 */
export function ambientShareOfFullExposure({ ambientUnderexposure }: Named<Inputs>): number {
  const share = 2 ** -requireFinite('ambient-underexposure', ambientUnderexposure);
  if (share === Infinity) throw new OutOfRange('ambient-underexposure', ambientUnderexposure, '−1000 stops or above');
  return share;
}

export const ambientShareOfFullExposureFormula = {
  gives: 'ambient-share-of-full-exposure',
  from: ['ambient-underexposure'],
  tex: String.raw`\q{ambient-share-of-full-exposure} = 2^{-\q{ambient-underexposure}}`,
  evaluate: ambientShareOfFullExposure,
  says: 'Three stops short, daylight gives an eighth of the exposure; a flash that fills it up gives seven.',
  source: 'definition of a stop, core/exposure/README.md#ambient',
  checkedBy: ['angles-tanks-and-lights', 'cones-tanks-and-queues'],
} as const satisfies Formula<Inputs>;
