import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'objective-magnification' | 'focal-length' | 'tube-focal-length';

/**
 * What an infinity objective gives on a tube lens, or on a camera lens at infinity.
 *
 * m = M f/(design tube focal length)
 *
 * @param given.objectiveMagnification *M*, as engraved; above 0
 * @param given.focalLength *f*, of the lens behind the objective, mm, above 0
 * @param given.tubeFocalLength of the tube lens that the engraving is meant for, mm, above 0
 * @returns *m* = f/f_obj, whatever the gap between the two. Not the engraved number unless *f* is the design's.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes the lens behind at infinity.
 * Source: f_obj = (design tube focal length)/M; derived in [README](README.md#objectives).
 *
 * @example magnificationOfInfinityObjective({ objectiveMagnification: 10, focalLength: 100, tubeFocalLength: 200 }) // 5
 */
export function magnificationOfInfinityObjective({
  objectiveMagnification,
  focalLength,
  tubeFocalLength,
}: Named<Inputs>): number {
  requirePositive('objective-magnification', objectiveMagnification);
  requirePositive('focal-length', focalLength);
  requirePositive('tube-focal-length', tubeFocalLength);
  return (objectiveMagnification * focalLength) / tubeFocalLength;
}

export const magnificationOfInfinityObjectiveFormula = {
  gives: 'magnification',
  from: ['objective-magnification', 'focal-length', 'tube-focal-length'],
  tex: String.raw`\q{magnification} = \q{objective-magnification}\,\frac{\q{focal-length}}{\q{tube-focal-length}}`,
  evaluate: magnificationOfInfinityObjective,
  says: 'An objective gives its engraved magnification only with the tube lens it was made for.',
  source: 'derived in core/rig/README.md#objectives',
  checkedBy: ['coupled-lens-matrices', 'microscope-depth'],
} as const satisfies Formula<Inputs>;
