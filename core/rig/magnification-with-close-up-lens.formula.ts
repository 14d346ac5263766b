import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'focus-magnification' | 'close-up-power' | 'main-lens.subject-distance' | 'close-up-gap';

/**
 * What a close-up lens gives on a lens that is focused close by itself.
 *
 * m = m₀ (1 + Φ (s₀ − g)/1000)
 *
 * @param given.focusMagnification *m₀*, of the lens alone, above 0 (at infinity take m = f Φ/1000)
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.mainLensSubjectDistance *s₀* = f (1 + 1/m₀), from H to where the lens is focused by itself, mm, above *g*
 * @param given.closeUpGap *g*, from the close-up lens back to H, mm; below 0 where H lies in front of it, as in long lenses
 * @returns *m*. Neither the sum of the two magnifications nor their product.
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance
 *
 * Assumes a thin close-up lens.
 * Source: m₀ times (s₀ − g)/w; derived in [README](README.md#close-up-lenses).
 *
 * @example magnificationWithCloseUpLens({ focusMagnification: 0.1, closeUpPower: 4, mainLensSubjectDistance: 520, closeUpGap: 20 }) // 0.3
 */
export function magnificationWithCloseUpLens({
  focusMagnification,
  closeUpPower,
  mainLensSubjectDistance,
  closeUpGap,
}: Named<Inputs>): number {
  requirePositive('focus-magnification', focusMagnification);
  requirePositive('close-up-power', closeUpPower);
  requirePositive('main-lens.subject-distance', mainLensSubjectDistance);
  requireFinite('close-up-gap', closeUpGap);
  if (closeUpGap >= mainLensSubjectDistance) {
    throw new OutOfRange(
      'close-up-gap',
      closeUpGap,
      `less than ${mainLensSubjectDistance}, where the lens is focused by itself`,
    );
  }
  return focusMagnification * (1 + (closeUpPower * (mainLensSubjectDistance - closeUpGap)) / metre);
}

export const magnificationWithCloseUpLensFormula = {
  gives: 'magnification',
  from: ['focus-magnification', 'close-up-power', 'main-lens.subject-distance', 'close-up-gap'],
  tex: String.raw`\q{magnification} = \q{focus-magnification}\left(1 + \frac{\q{close-up-power}\left(\q{main-lens.subject-distance} - \q{close-up-gap}\right)}{1000}\right)`,
  evaluate: magnificationWithCloseUpLens,
  says: 'The subject comes nearer, and is magnified in the same proportion.',
  source: 'the lens equation; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
  // A lens at infinity has a formula of its own; the close-up lens stands nearer to the lens than its subject.
  sample: { 'focus-magnification': [0.01, 5], 'main-lens.subject-distance': [320, 50000] },
} as const satisfies Formula<Inputs>;
