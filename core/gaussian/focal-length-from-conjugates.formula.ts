import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'subject-distance' | 'image-distance';

/**
 * The focal length of a lens that images a subject at one distance to another.
 *
 * f = s s' / (s + s'), the same as 1/f = 1/s + 1/s'
 *
 * @param given.subjectDistance *s*, from H, mm, above 0
 * @param given.imageDistance *s'*, from H′, mm; negative for a virtual image, then longer than *s*
 * @returns *f*, mm, above 0
 * @throws OutOfRange for a subject distance not above zero, and for an image that no converging lens makes:
 *   at H′ itself, or virtual and no farther than the subject
 *
 * Assumes Gaussian optics in air.
 * Source: OpenStax, University Physics Vol. 3, section 2.4 (thin-lens equation). Derived in [README](README.md#conjugates).
 *
 * @example focalLengthFromConjugates({ subjectDistance: 150, imageDistance: 75 }) // 50
 */
export function focalLengthFromConjugates({ subjectDistance, imageDistance }: Named<Inputs>): number {
  requirePositive('subject-distance', subjectDistance);
  requireFinite('image-distance', imageDistance);
  if (imageDistance <= 0 && imageDistance >= -subjectDistance) {
    throw new OutOfRange(
      'image-distance',
      imageDistance,
      'above 0, or virtual (negative) and farther than the subject',
    );
  }
  return (subjectDistance * imageDistance) / (subjectDistance + imageDistance);
}

export const focalLengthFromConjugatesFormula = {
  gives: 'focal-length',
  from: ['subject-distance', 'image-distance'],
  tex: String.raw`\q{focal-length} = \frac{\q{subject-distance}\,\q{image-distance}}{\q{subject-distance} + \q{image-distance}}`,
  evaluate: focalLengthFromConjugates,
  says: 'Two distances and a sharp image tell you the focal length.',
  source: 'OpenStax, University Physics Vol. 3, section 2.4',
  checkedBy: ['conjugates-in-manuals', 'lens-power', 'thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
