import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'field-width';

/**
 * Magnification read off a photograph of a ruler.
 *
 * m = W_x / field width
 *
 * @param given.sensorWidth *W_x*, long side of the sensor, mm, above 0
 * @param given.fieldWidth length of ruler that spans the whole picture, mm, above 0
 * @returns *m*, a pure number. True only for an uncropped picture and a ruler in the sharp plane, parallel to the long side.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#field).
 *
 * @example magnificationFromField({ sensorWidth: 36, fieldWidth: 24 }) // 1.5
 */
export function magnificationFromField({ sensorWidth, fieldWidth }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('field-width', fieldWidth);
  return sensorWidth / fieldWidth;
}

export const magnificationFromFieldFormula = {
  gives: 'magnification',
  from: ['sensor-width', 'field-width'],
  tex: String.raw`\q{magnification} = \frac{\q{sensor-width}}{\q{field-width}}`,
  evaluate: magnificationFromField,
  says: 'Photograph a ruler: the sensor’s width over the millimetres you can count is the magnification.',
  source: 'definition of lateral magnification',
  checkedBy: ['line-scan-camera-notes'],
} as const satisfies Formula<Inputs>;
