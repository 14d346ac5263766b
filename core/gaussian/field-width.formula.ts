import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'magnification';

/**
 * The width of the subject plane that fills the long side of the sensor.
 *
 * field width = W_x / m
 *
 * @param given.sensorWidth *W_x*, long side of the sensor, mm, above 0
 * @param given.magnification *m*, image over subject size, above 0
 * @returns mm in the sharp plane. It needs no focal length, and holds in no other plane.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#field).
 *
 * @example fieldWidth({ sensorWidth: 36, magnification: 0.5 }) // 72
 */
export function fieldWidth({ sensorWidth, magnification }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('magnification', magnification);
  return sensorWidth / magnification;
}

export const fieldWidthFormula = {
  gives: 'field-width',
  from: ['sensor-width', 'magnification'],
  tex: String.raw`\q{field-width} = \frac{\q{sensor-width}}{\q{magnification}}`,
  evaluate: fieldWidth,
  says: 'The field is the sensor, divided by the magnification: at life size the field is as wide as the sensor.',
  source: 'definition of lateral magnification',
  checkedBy: ['common-practice', 'crop-factor', 'library-exif-composites', 'marks-in-matrices', 'pupils-in-matrices'],
} as const satisfies Formula<Inputs>;
