import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification';

/**
 * How far the subject stands in front of the front principal plane H at a given magnification.
 *
 * s = f (1 + 1/m)
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.magnification *m*, image over subject size, above 0
 * @returns *s*, mm, from H. Neither the working distance (from the front of the lens) nor the focus distance (from the sensor).
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes Gaussian optics in air.
 * Source: US Army Subcourse SS0511, p. 106. Derived in [README](README.md#conjugates).
 *
 * @example subjectDistance({ focalLength: 50, magnification: 0.5 }) // 150
 */
export function subjectDistance({ focalLength, magnification }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  return focalLength * (1 + 1 / magnification);
}

export const subjectDistanceFormula = {
  gives: 'subject-distance',
  from: ['focal-length', 'magnification'],
  tex: String.raw`\q{subject-distance} = \q{focal-length}\left(1 + \frac{1}{\q{magnification}}\right)`,
  evaluate: subjectDistance,
  says: 'However strong the magnification, the subject stays more than one focal length away from H.',
  source: 'US Army Subcourse SS0511, p. 106',
  checkedBy: [
    'common-practice',
    'conjugates-in-manuals',
    'enlarging-tables',
    'focusing-in-textbooks',
    'pupils-in-matrices',
    'thin-lens-openstax',
  ],
} as const satisfies Formula<Inputs>;
