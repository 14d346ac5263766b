import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-height' | 'magnification';

/**
 * The height of the subject plane that fills the short side of the sensor.
 *
 * field height = W_y / m
 *
 * @param given.sensorHeight *W_y*, short side of the sensor, mm, above 0
 * @param given.magnification *m*, image over subject size, above 0
 * @returns mm in the sharp plane. It needs no focal length, and holds in no other plane.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: definition of lateral magnification. See [README](README.md#field).
 *
 * @example fieldHeight({ sensorHeight: 24, magnification: 0.5 }) // 48
 */
export function fieldHeight({ sensorHeight, magnification }: Named<Inputs>): number {
  requirePositive('sensor-height', sensorHeight);
  requirePositive('magnification', magnification);
  return sensorHeight / magnification;
}

export const fieldHeightFormula = {
  gives: 'field-height',
  from: ['sensor-height', 'magnification'],
  tex: String.raw`\q{field-height} = \frac{\q{sensor-height}}{\q{magnification}}`,
  evaluate: fieldHeight,
  says: 'The short side of the picture shows the short side of the sensor, divided by the magnification.',
  source: 'definition of lateral magnification',
  checkedBy: ['thin-lens-openstax'],
} as const satisfies Formula<Inputs>;
