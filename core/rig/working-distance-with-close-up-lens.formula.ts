import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { reachOf } from './magnification-with-close-up-lens.formula.ts';

type Inputs = 'focal-length' | 'focus-magnification' | 'close-up-gap' | 'magnification';

/**
 * Where the subject is before a close-up lens on a lens, wherever that is focused by itself.
 *
 * w = (f + m₀ (f − g))/m
 *
 * @param given.focalLength *f*, of the camera lens as it is focused, mm, above 0
 * @param given.focusMagnification *m₀*, of the lens alone, 0 (infinity) or above
 * @param given.closeUpGap *g*, from the close-up lens back to H, mm, below f (1 + 1/m₀); below 0 where H lies in front of it, as in long lenses
 * @param given.magnification *m*, with the close-up lens on, above 0
 * @returns *w*, mm, from the close-up lens. At most 1/Φ, which it is at infinity, and less than without the close-up lens.
 * @throws OutOfRange for values out of range, and for a gap not shorter than the distance at which the lens alone is sharp
 *
 * Assumes a thin close-up lens that stands foremost.
 * Source: the lens equation, its image at s₀ − g; derived in [README](README.md#close-up-lenses).
 *
 * @example workingDistanceWithCloseUpLens({ focalLength: 50, focusMagnification: 0.1, closeUpGap: 50, magnification: 0.3 }) // 166.666...
 */
export function workingDistanceWithCloseUpLens({ magnification, ...lens }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  return reachOf(lens) / magnification;
}

export const workingDistanceWithCloseUpLensFormula = {
  gives: 'working-distance',
  from: ['focal-length', 'focus-magnification', 'close-up-gap', 'magnification'],
  tex: String.raw`\q{working-distance} = \frac{\q{focal-length} + \q{focus-magnification}\left(\q{focal-length} - \q{close-up-gap}\right)}{\q{magnification}}`,
  evaluate: workingDistanceWithCloseUpLens,
  says: 'As many times as the close-up lens enlarges, the subject is nearer than where the lens alone is focused.',
  source: 'the lens equation; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
  // The close-up lens stands nearer to the lens than its subject.
  sample: { 'focal-length': [50, 800], 'focus-magnification': [0, 1], 'close-up-gap': [-200, 90] },
} as const satisfies Formula<Inputs>;
