import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'close-up-power' | 'subject-distance' | 'close-up-gap';

/**
 * Where the subject stands before a close-up lens on a lens that is focused close by itself.
 *
 * 1/w = Φ/1000 + 1/(s₀ − g)
 *
 * @param given.closeUpPower *Φ*, dpt, above 0
 * @param given.subjectDistance *s₀*, from H to where the lens is focused by itself, mm, above *g*
 * @param given.closeUpGap *g*, from the close-up lens back to H, mm, 0 or above
 * @returns *w*, mm, from the close-up lens. Less than 1/Φ and less than without the close-up lens.
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance
 *
 * Assumes a thin close-up lens that stands foremost.
 * Source: the lens equation, its image at s₀ − g; derived in [README](README.md#close-up-lenses).
 *
 * @example workingDistanceWithCloseUpLens({ closeUpPower: 4, subjectDistance: 520, closeUpGap: 20 }) // 166.666...
 */
export function workingDistanceWithCloseUpLens({ closeUpPower, subjectDistance, closeUpGap }: Named<Inputs>): number {
  requirePositive('close-up-power', closeUpPower);
  requirePositive('subject-distance', subjectDistance);
  requireNotNegative('close-up-gap', closeUpGap);
  if (closeUpGap >= subjectDistance) {
    throw new OutOfRange(
      'close-up-gap',
      closeUpGap,
      `less than ${subjectDistance}, where the lens is focused by itself`,
    );
  }
  return 1 / (closeUpPower / metre + 1 / (subjectDistance - closeUpGap));
}

export const workingDistanceWithCloseUpLensFormula = {
  gives: 'working-distance',
  from: ['close-up-power', 'subject-distance', 'close-up-gap'],
  tex: String.raw`\q{working-distance} = \frac{1}{\frac{\q{close-up-power}}{1000} + \frac{1}{\q{subject-distance} - \q{close-up-gap}}}`,
  evaluate: workingDistanceWithCloseUpLens,
  says: 'The close-up lens takes the light where the camera lens was focused and moves that place nearer.',
  source: 'the lens equation; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['close-up-lens-matrices'],
  // The close-up lens stands nearer to the lens than its subject.
  sample: { 'subject-distance': [210, 50000] },
} as const satisfies Formula<Inputs>;
