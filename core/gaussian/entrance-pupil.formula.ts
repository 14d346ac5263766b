import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'f-number';

/**
 * The diameter of the aperture as the subject sees it.
 *
 * D = f/N
 *
 * @param given.focalLength *f*, mm, above 0; at infinity focus if *N* is the marked number
 * @param given.fNumber *N*, above 0
 * @returns *D*, mm. Not the diameter of the iris itself, which the front glass shows enlarged or reduced.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens that keeps *f* and *D* while focusing. With internal focusing both move: the marked *N* then gives *D* at
 * infinity only.
 * Source: definition of the f-number. See [README](README.md#pupils).
 *
 * @example entrancePupil({ focalLength: 50, fNumber: 2 }) // 25
 */
export function entrancePupil({ focalLength, fNumber }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('f-number', fNumber);
  return focalLength / fNumber;
}

export const entrancePupilFormula = {
  gives: 'entrance-pupil',
  from: ['focal-length', 'f-number'],
  tex: String.raw`\q{entrance-pupil} = \frac{\q{focal-length}}{\q{f-number}}`,
  evaluate: entrancePupil,
  says: 'The f-number is a fraction: f/8 on a 200 mm lens is an opening 25 mm wide.',
  source: 'definition of the f-number',
  checkedBy: [
    'common-practice',
    'depth-from-hyperfocal',
    'depth-maths-system',
    'depth-with-pupils',
    'f-number-definition',
    'library-exif-composites',
    'marks-in-matrices',
    'pupils-in-matrices',
    'stops-in-manuals',
  ],
} as const satisfies Formula<Inputs>;
