import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-depth' | 'effective-f-number';

/**
 * Diameter on the sensor of the blur of both ends of a deep subject whose middle is in focus, in the form for close-ups.
 *
 * b = m² Z / (2 N_w)
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectDepth *Z*, nearest to farthest part, mm; 0 or above
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @returns *b*, mm, by geometry alone: the Airy disc comes on top once the two are alike. `defocusBlur` has each side exactly.
 * @throws OutOfRange for a depth below zero, what must be above zero and is not, or anything not finite
 *
 * Assumes a depth small beside the distance to the entrance pupil: half the depth parts by Z/(2u) of itself.
 * Source: derived in [README](README.md#blur). It is *c* where *Z* is the depth of field.
 *
 * @example defocusBlurOfEnds({ magnification: 1, subjectDepth: 2, effectiveFNumber: 16 }) // 0.0625
 */
export function defocusBlurOfEnds({ magnification, subjectDepth, effectiveFNumber }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('subject-depth', subjectDepth);
  requirePositive('effective-f-number', effectiveFNumber);
  return (magnification ** 2 * subjectDepth) / (2 * effectiveFNumber);
}

export const defocusBlurOfEndsFormula = {
  gives: 'defocus-blur',
  from: ['magnification', 'subject-depth', 'effective-f-number'],
  tex: String.raw`\q{defocus-blur} = \frac{\q{magnification}^2\,\q{subject-depth}}{2\,\q{effective-f-number}}`,
  evaluate: defocusBlurOfEnds,
  says: 'The ends of the depth, half of it off the sharp plane: twice the f-number, half the blur.',
  source: 'derived in core/depth/README.md#blur',
  checkedBy: ['best-f-number-table', 'contrast-through-depth'],
} as const satisfies Formula<Inputs>;
