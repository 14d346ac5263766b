import { requireFinite } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'ambient-underexposure';

/**
 * The part of an exposure that comes from the light already there, beside a flash that gives a full exposure by itself.
 *
 * ambient share = 1 / (1 + 2^shortfall)
 *
 * @param given.ambientUnderexposure stops by which the light already there falls short of a full exposure at these settings, of either sign
 * @returns a share of all light recorded. What moves leaves a streak of that strength beside the image that the flash froze.
 * @throws OutOfRange for a shortfall that is not finite
 *
 * Assumes a flash set for a full exposure, so that both together overexpose by log2(1 + 2^−shortfall) stops. A flash set to fill up
 * what is missing leaves the light already there 2^−shortfall of the whole.
 * Source: exposures add as light does, not as stops do. Derived in [README](README.md#ambient).
 *
 * @example ambientShare({ ambientUnderexposure: 3 }) // 0.1111...
 */
export function ambientShare({ ambientUnderexposure }: Named<Inputs>): number {
  return 1 / (1 + 2 ** requireFinite('ambient-underexposure', ambientUnderexposure));
}

export const ambientShareFormula = {
  gives: 'ambient-share',
  from: ['ambient-underexposure'],
  tex: String.raw`\q{ambient-share} = \frac{1}{1 + 2^{\q{ambient-underexposure}}}`,
  evaluate: ambientShare,
  says: 'Three stops below the flash, daylight makes a ninth of the picture.',
  source: 'derived in core/exposure/README.md#ambient',
  checkedBy: ['common-practice-exposure', 'counting-light', 'flash-by-other-routes'],
} as const satisfies Formula<Inputs>;
