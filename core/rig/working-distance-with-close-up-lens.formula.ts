import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'close-up-power' | 'main-lens.subject-distance' | 'close-up-gap';

/**
 * Where the subject stands before a close-up lens on a lens that is focused close by itself.
 *
 * 1/w = Φ/1000 + 1/(s₀ − g)
 *
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.mainLensSubjectDistance *s₀*, from H to where the lens is focused by itself, mm, above *g*
 * @param given.closeUpGap *g*, from the close-up lens back to H, mm; below 0 where H lies in front of it, as in long lenses
 * @returns *w*, mm, from the close-up lens. Less than 1/Φ and less than without the close-up lens.
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance
 *
 * Assumes a thin close-up lens that stands foremost.
 * Source: the lens equation, its image at s₀ − g; derived in [README](README.md#close-up-lenses).
 *
 * @example workingDistanceWithCloseUpLens({ closeUpPower: 4, mainLensSubjectDistance: 520, closeUpGap: 20 }) // 166.666...
 */
export function workingDistanceWithCloseUpLens({
  closeUpPower,
  mainLensSubjectDistance,
  closeUpGap,
}: Named<Inputs>): number {
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
  return 1 / (closeUpPower / metre + 1 / (mainLensSubjectDistance - closeUpGap));
}

export const workingDistanceWithCloseUpLensFormula = {
  gives: 'working-distance',
  from: ['close-up-power', 'main-lens.subject-distance', 'close-up-gap'],
  tex: String.raw`\q{working-distance} = \frac{1}{\frac{\q{close-up-power}}{1000} + \frac{1}{\q{main-lens.subject-distance} - \q{close-up-gap}}}`,
  evaluate: workingDistanceWithCloseUpLens,
  says: 'The close-up lens takes the light where the camera lens was focused and moves that place nearer.',
  source: 'the lens equation; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
  // The close-up lens stands nearer to the lens than its subject.
  sample: { 'main-lens.subject-distance': [320, 50000] },
} as const satisfies Formula<Inputs>;
