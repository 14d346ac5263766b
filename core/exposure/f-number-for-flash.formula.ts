import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';
import { requireShare } from './share.ts';

type Inputs = 'guide-number' | 'iso' | 'flash-power' | 'flash-distance' | 'light-loss';

/**
 * The marked f-number to set for a flash, in any chain.
 *
 * N = GN √(S/100 · power) / d · 2^(−light loss/2), with d in metres
 *
 * @param given.guideNumber *GN*, at ISO 100 and full power, m; above 0
 * @param given.iso *S*, exposure index; above 0
 * @param given.flashPower share of full power, above 0 and at most 1
 * @param given.flashDistance *d*, flash head to subject, mm; above 0
 * @param given.lightLoss of the chain, 2 log2(N_w/N), stops; of either sign
 * @returns *N*, as marked on the lens whose stop limits. It may lie beyond what the lens can be set to.
 * @throws OutOfRange for anything not finite, for what must be above zero and is not, for a power above 1, and for a
 *   loss so large that no f-number is left
 *
 * Assumes a flash that is small against its distance, as `effective-f-number-from-guide-number` does. The distance is the flash’s, not the lens’s.
 * Source: N_w by guide number, brought to the mark by the light loss. Derived in [README](README.md#flash).
 *
 * @example fNumberForFlash({ guideNumber: 14, iso: 100, flashPower: 0.25, flashDistance: 250, lightLoss: 2 }) // 14
 */
export function fNumberForFlash({ guideNumber, iso, flashPower, flashDistance, lightLoss }: Named<Inputs>): number {
  requirePositive('guide-number', guideNumber);
  requirePositive('iso', iso);
  requireShare('flash-power', flashPower);
  requirePositive('flash-distance', flashDistance);
  const share = 2 ** (-requireFinite('light-loss', lightLoss) / 2);
  const fNumber = (guideNumber / (flashDistance / metre)) * Math.sqrt((iso / 100) * flashPower) * share;
  if (fNumber > 0 && fNumber < Infinity) return fNumber;
  throw new OutOfRange('light-loss', lightLoss, 'stops that leave an f-number');
}

export const fNumberForFlashFormula = {
  gives: 'f-number',
  from: ['guide-number', 'iso', 'flash-power', 'flash-distance', 'light-loss'],
  tex: String.raw`\q{f-number} = \frac{\q{guide-number}}{\q{flash-distance}/1000}\sqrt{\frac{\q{iso}}{100}\,\q{flash-power}}\;2^{-\q{light-loss}/2}`,
  metres: 'flash-distance',
  evaluate: fNumberForFlash,
  says: 'Close up the lens has already lost light: open it by as many stops.',
  source: 'derived in core/exposure/README.md#flash',
  checkedBy: ['common-practice-exposure', 'guide-numbers'],
} as const satisfies Formula<Inputs>;
