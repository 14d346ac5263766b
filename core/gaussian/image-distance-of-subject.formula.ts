import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'subject-distance';

/**
 * Where the image of a subject at a given distance lies.
 *
 * s' = f s / (s − f)
 *
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.subjectDistance *s*, from H, mm, above 0 and not equal to *f*
 * @returns *s'*, mm, from H′ towards the sensor. Negative where the subject stands within the focal length: the image is then
 *   a virtual one in front of H′, which no sensor can catch.
 * @throws OutOfRange for anything not finite and above zero, and for a subject exactly at the focal length, whose light
 *   leaves the lens parallel and forms no image at any distance
 *
 * Assumes Gaussian optics in air.
 * Source: OpenStax, University Physics Vol. 3, section 2.4 (thin-lens equation). Derived in [README](README.md#conjugates).
 *
 * @example imageDistanceOfSubject({ focalLength: 100, subjectDistance: 500 }) // 125
 */
export function imageDistanceOfSubject({ focalLength, subjectDistance }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('subject-distance', subjectDistance);
  if (subjectDistance === focalLength) {
    throw new OutOfRange(
      'subject-distance',
      subjectDistance,
      'more or less than the focal length, from where no image forms',
    );
  }
  return (focalLength * subjectDistance) / (subjectDistance - focalLength);
}

export const imageDistanceOfSubjectFormula = {
  gives: 'image-distance',
  from: ['focal-length', 'subject-distance'],
  tex: String.raw`\q{image-distance} = \frac{\q{focal-length}\,\q{subject-distance}}{\q{subject-distance} - \q{focal-length}}`,
  evaluate: imageDistanceOfSubject,
  says: 'As the subject comes nearer, its image moves away behind the lens, to infinity when the subject is one focal length away.',
  source: 'OpenStax, University Physics Vol. 3, section 2.4',
  checkedBy: ['conjugates-in-manuals', 'focusing-in-textbooks', 'thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
