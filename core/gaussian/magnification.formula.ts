import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'image-width' | 'subject-width';

/**
 * Magnification: the size of the image on the sensor over the size of the subject.
 *
 * m = image width / subject width
 *
 * @param given.imageWidth of the subject's image on the sensor (not on a screen or print), mm, above 0
 * @param given.subjectWidth of the thing itself, along the same direction, mm, above 0
 * @returns *m*, a pure number; 1 is life size. The size of the sensor has no part in it.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification; OpenStax, University Physics Vol. 3, section 2.1. See [README](README.md#magnification).
 *
 * @example magnification({ imageWidth: 12, subjectWidth: 24 }) // 0.5
 */
export function magnification({ imageWidth, subjectWidth }: Named<Inputs>): number {
  requirePositive('image-width', imageWidth);
  requirePositive('subject-width', subjectWidth);
  return imageWidth / subjectWidth;
}

export const magnificationFormula = {
  gives: 'magnification',
  from: ['image-width', 'subject-width'],
  tex: String.raw`\q{magnification} = \frac{\q{image-width}}{\q{subject-width}}`,
  evaluate: magnification,
  says: 'How large it is on the sensor, compared with how large it really is.',
  source: 'definition of lateral magnification; OpenStax, University Physics Vol. 3, section 2.1',
  checkedBy: ['conjugates-in-manuals', 'exposure-increase', 'thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
