import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification' | 'pupil-magnification';

/**
 * How far the subject stands from the entrance pupil: the point from which the lens looks.
 *
 * u = f (1/m + 1/P)
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @returns *u*, mm. The subject distance from H only where P = 1.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian optics in air and the lens the right way round (turned round, P becomes 1/P).
 * Source: derived in [README](README.md#pupils).
 *
 * @example entrancePupilDistance({ focalLength: 50, magnification: 0.5, pupilMagnification: 1 }) // 150
 */
export function entrancePupilDistance({ focalLength, magnification, pupilMagnification }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return focalLength * (1 / magnification + 1 / pupilMagnification);
}

export const entrancePupilDistanceFormula = {
  gives: 'entrance-pupil-distance',
  from: ['focal-length', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{entrance-pupil-distance} = \q{focal-length}\left(\frac{1}{\q{magnification}} + \frac{1}{\q{pupil-magnification}}\right)`,
  evaluate: entrancePupilDistance,
  says: 'Perspective and depth of field are counted from the entrance pupil; P tells where it is.',
  source: 'derived in core/gaussian/README.md#pupils',
  checkedBy: [
    'common-practice',
    'depth-from-hyperfocal',
    'depth-maths-system',
    'depth-with-pupils',
    'library-exif-composites',
    'pupils-in-matrices',
  ],
} as const satisfies Formula<Inputs>;
