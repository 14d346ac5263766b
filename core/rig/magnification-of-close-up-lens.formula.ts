import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { metre } from '#core/quantity/metre.ts';

type Inputs = 'focal-length' | 'close-up-power';

/**
 * What a close-up lens gives on a lens focused at infinity.
 *
 * m = f Φ/1000, f in mm and Φ in dpt
 *
 * @param given.focalLength *f*, of the camera lens, mm, above 0
 * @param given.closeUpPower *Φ*, dpt, above 0; powers of stacked close-up lenses add
 * @returns *m*. The longer the lens, the stronger the same close-up lens; no light is lost.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens at infinity; the gap between the two does not matter then.
 * Source: L. P. Clerc, Photography: Theory and Practice, section 118 (subject in the front focal plane of the supplementary lens). Derived in [README](README.md#close-up-lenses).
 *
 * @example magnificationOfCloseUpLens({ focalLength: 90, closeUpPower: 4 }) // 0.36
 */
export function magnificationOfCloseUpLens({ focalLength, closeUpPower }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('close-up-power', closeUpPower);
  return (focalLength * closeUpPower) / metre;
}

export const magnificationOfCloseUpLensFormula = {
  gives: 'magnification',
  from: ['focal-length', 'close-up-power'],
  tex: String.raw`\q{magnification} = \frac{\q{focal-length}\,\q{close-up-power}}{1000}`,
  evaluate: magnificationOfCloseUpLens,
  says: 'The close-up lens turns the light of the subject parallel, and the main lens makes the picture: the longer it is, the larger.',
  source: 'L. P. Clerc, Photography: Theory and Practice, section 118; derived in core/rig/README.md#close-up-lenses',
  checkedBy: ['blue-and-red-by-matrices', 'close-up-lens-matrices'],
} as const satisfies Formula<Inputs>;
