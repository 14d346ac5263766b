import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-width' | 'sensor-width';

/**
 * The share of the picture width that a subject takes; `magnificationFromFrameFill` reads it backwards.
 *
 * share = m × subject width / W_x
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectWidth of the subject, along the long side of the picture, mm; above 0
 * @param given.sensorWidth *W_x*, mm; above 0
 * @returns a share; above 1 for a subject that does not fit in. Along the short side with that side’s lengths.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#field).
 *
 * @example frameFill({ magnification: 0.5, subjectWidth: 54, sensorWidth: 36 }) // 0.75
 */
export function frameFill({ magnification, subjectWidth, sensorWidth }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('subject-width', subjectWidth);
  requirePositive('sensor-width', sensorWidth);
  return (magnification * subjectWidth) / sensorWidth;
}

export const frameFillFormula = {
  gives: 'frame-fill',
  from: ['magnification', 'subject-width', 'sensor-width'],
  tex: String.raw`\q{frame-fill} = \frac{\q{magnification}\,\q{subject-width}}{\q{sensor-width}}`,
  evaluate: frameFill,
  says: 'Half of it leaves a quarter of the sensor’s pixels for the subject.',
  source: 'definition of lateral magnification',
  checkedBy: ['one-frame-and-its-light'],
} as const satisfies Formula<Inputs>;
