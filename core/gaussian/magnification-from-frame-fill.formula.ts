import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'frame-fill' | 'sensor-width' | 'subject-width';

/**
 * The magnification at which a subject takes a share of the picture's width: `frameFill` read backwards.
 *
 * m = share × W_x / subject width
 *
 * @param given.frameFill share of the sensor's width that the subject's image takes; above 0, at most 1
 * @param given.sensorWidth *W_x*, mm, above 0
 * @param given.subjectWidth of the thing itself, along the picture's long side, mm, above 0
 * @returns *m*, a pure number. Whether the lens gets there is another question.
 * @throws OutOfRange for a share that is not above 0 or is above 1, and for widths that are not finite and above zero
 *
 * Source: definition of lateral magnification, the image being share × W_x wide. See [README](README.md#field).
 *
 * @example magnificationFromFrameFill({ frameFill: 0.5, sensorWidth: 36, subjectWidth: 6 }) // 3
 */
export function magnificationFromFrameFill({ frameFill, sensorWidth, subjectWidth }: Named<Inputs>): number {
  if (!(frameFill > 0 && frameFill <= 1)) throw new OutOfRange('frame-fill', frameFill, 'above 0 and at most 1');
  requirePositive('sensor-width', sensorWidth);
  requirePositive('subject-width', subjectWidth);
  return (frameFill * sensorWidth) / subjectWidth;
}

export const magnificationFromFrameFillFormula = {
  gives: 'magnification',
  from: ['frame-fill', 'sensor-width', 'subject-width'],
  tex: String.raw`\q{magnification} = \frac{\q{frame-fill} \cdot \q{sensor-width}}{\q{subject-width}}`,
  evaluate: magnificationFromFrameFill,
  says: 'How large you want it in the picture says how large it must be on the sensor.',
  source: 'definition of lateral magnification',
  checkedBy: ['frames-and-depths'],
} as const satisfies Formula<Inputs>;
