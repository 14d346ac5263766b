import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'subject-distance';

/**
 * The magnification at which a subject at a given distance is imaged.
 *
 * m = f / |s − f|
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.subjectDistance *s*, from H, mm, above 0 and not equal to *f*
 * @returns *m*, a pure number without sign, for the real image (*s* > *f*) and the virtual one (*s* < *f*) alike
 * @throws OutOfRange for anything not finite and above zero, and for a subject exactly at the focal length
 *
 * Assumes Gaussian optics in air.
 * Source: OpenStax, University Physics Vol. 3, section 2.4 (thin-lens equation, m = s'/s). Derived in [README](README.md#conjugates).
 *
 * @example magnificationOfSubject({ focalLength: 100, subjectDistance: 500 }) // 0.25
 */
export function magnificationOfSubject({ focalLength, subjectDistance }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('subject-distance', subjectDistance);
  if (subjectDistance === focalLength) {
    throw new OutOfRange(
      'subject-distance',
      subjectDistance,
      'more or less than the focal length, from where no image forms',
    );
  }
  return focalLength / Math.abs(subjectDistance - focalLength);
}

export const magnificationOfSubjectFormula = {
  gives: 'magnification',
  from: ['focal-length', 'subject-distance'],
  tex: String.raw`\q{magnification} = \frac{\q{focal-length}}{\left|\q{subject-distance} - \q{focal-length}\right|}`,
  evaluate: magnificationOfSubject,
  says: 'Count how far the subject stands beyond the focal point: the focal length divided by that is the magnification.',
  source: 'OpenStax, University Physics Vol. 3, section 2.4',
  checkedBy: [
    'common-practice',
    'conjugates-in-manuals',
    'crop-factor',
    'depth-from-hyperfocal',
    'depth-maths-system',
    'focusing-in-textbooks',
    'hand-meters-close-up',
    'image-motion',
    'library-exif-composites',
    'thin-lens-openstax',
  ],
} as const satisfies Formula<Inputs>;
