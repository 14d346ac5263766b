import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'focal-length' | 'focus-magnification' | 'close-up-power' | 'close-up-gap';

/**
 * What a close-up lens gives on a lens, wherever that is focused by itself.
 *
 * m = m₀ + Φ (f + m₀ (f − g))/1000
 *
 * @param given.focalLength *f*, of the camera lens as it is focused, mm, above 0
 * @param given.focusMagnification *m₀*, of the lens alone, 0 (infinity) or above
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.closeUpGap *g*, from the close-up lens back to H, mm, below f (1 + 1/m₀); below 0 where H lies in front of it, as in long lenses
 * @returns *m*. At infinity fΦ/1000, whatever the gap; else neither the sum of the two magnifications nor their product.
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance at which the lens alone is sharp
 *
 * Assumes a thin close-up lens.
 * Source: m₀ times (s₀ − g)/w with s₀ = f (1 + 1/m₀); derived in [README](README.md#close-up-lenses).
 *
 * @example magnificationWithCloseUpLens({ focalLength: 50, focusMagnification: 0.1, closeUpPower: 4, closeUpGap: 50 }) // 0.3
 */
export function magnificationWithCloseUpLens({
  focalLength,
  focusMagnification,
  closeUpPower,
  closeUpGap,
}: Named<Inputs>): number {
  requirePositive('close-up-power', closeUpPower);
  const reach = reachOf({ focalLength, focusMagnification, closeUpGap });
  return focusMagnification + (closeUpPower * reach) / metre;
}

/**
 * m₀ times the distance from a close-up lens to where the lens behind it is sharp by itself: f + m₀ (f − g), which is f at infinity.
 *
 * @returns mm, above 0
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance at which the lens alone is sharp
 */
export function reachOf({
  focalLength,
  focusMagnification,
  closeUpGap,
}: Named<'focal-length' | 'focus-magnification' | 'close-up-gap'>): number {
  requirePositive('focal-length', focalLength);
  requireNotNegative('focus-magnification', focusMagnification);
  requireFinite('close-up-gap', closeUpGap);
  const reach = focalLength + focusMagnification * (focalLength - closeUpGap);
  if (reach <= 0) {
    const own = focalLength * (1 + 1 / focusMagnification);
    throw new OutOfRange('close-up-gap', closeUpGap, `less than ${own}, where the lens is focused by itself`);
  }
  return reach;
}

export const magnificationWithCloseUpLensFormula = {
  gives: 'magnification',
  from: ['focal-length', 'focus-magnification', 'close-up-power', 'close-up-gap'],
  tex: String.raw`\q{magnification} = \q{focus-magnification} + \frac{\q{close-up-power}\left(\q{focal-length} + \q{focus-magnification}\left(\q{focal-length} - \q{close-up-gap}\right)\right)}{1000}`,
  evaluate: magnificationWithCloseUpLens,
  says: 'To what the lens gives by itself the close-up lens adds: the more, the stronger it is and the longer the lens.',
  source: 'the lens equation; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
  // The close-up lens stands nearer to the lens than its subject.
  sample: { 'focal-length': [50, 800], 'focus-magnification': [0, 1], 'close-up-gap': [-200, 90] },
} as const satisfies Formula<Inputs>;
