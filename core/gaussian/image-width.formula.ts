import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-width';

/**
 * How wide a subject's image is on the sensor.
 *
 * image width = m × subject width
 *
 * @param given.magnification *m*, image over subject size, above 0
 * @param given.subjectWidth of the thing itself, mm, above 0
 * @returns mm on the sensor, the same on every sensor; whether it fits is another question
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#magnification).
 *
 * @example imageWidth({ magnification: 0.5, subjectWidth: 24 }) // 12
 */
export function imageWidth({ magnification, subjectWidth }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('subject-width', subjectWidth);
  return magnification * subjectWidth;
}

export const imageWidthFormula = {
  gives: 'image-width',
  from: ['magnification', 'subject-width'],
  tex: String.raw`\q{image-width} = \q{magnification} \cdot \q{subject-width}`,
  evaluate: imageWidth,
  says: 'At life size the image on the sensor is as large as the thing itself.',
  source: 'definition of lateral magnification',
  checkedBy: ['thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
