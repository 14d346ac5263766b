import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification' | 'pupil-magnification';

/**
 * From where a lens turned round looks at the subject.
 *
 * u = f (1/m + P)
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.magnification *m*, above 0
 * @param given.pupilMagnification *P*, of the lens the right way round; above 0
 * @returns *u*, mm, from what used to be the exit pupil.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian optics in air.
 * Source: u = f (1/m + 1/P) with 1/P for P; derived in [README](README.md#a-lens-turned-round).
 *
 * @example entrancePupilDistanceOfReversedLens({ focalLength: 28, magnification: 2, pupilMagnification: 1.5 }) // 56
 */
export function entrancePupilDistanceOfReversedLens({
  focalLength,
  magnification,
  pupilMagnification,
}: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return focalLength * (1 / magnification + pupilMagnification);
}

export const entrancePupilDistanceOfReversedLensFormula = {
  gives: 'entrance-pupil-distance',
  from: ['focal-length', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{entrance-pupil-distance} = \q{focal-length}\left(\frac{1}{\q{magnification}} + \q{pupil-magnification}\right)`,
  evaluate: entrancePupilDistanceOfReversedLens,
  says: 'Reversed, the pupil that used to face the sensor sets the perspective.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-lens-matrices', 'reversed-surface-by-surface'],
} as const satisfies Formula<Inputs>;
