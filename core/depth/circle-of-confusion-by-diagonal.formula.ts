import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'sensor-height';

/** How many circles of confusion make up the sensor's diagonal, by common practice. Others use 1440 or 1730. */
export const circlesAlongDiagonal = 1500;

/**
 * The circle of confusion by the rule of thumb that needs only the sensor.
 *
 * c = √(W_x² + W_y²) / 1500
 *
 * @param given.sensorWidth *W_x*, mm, above 0
 * @param given.sensorHeight *W_y*, mm, above 0
 * @returns *c*, mm on the sensor: 0.029 for 36 × 24 mm. It suits a whole picture seen from about its own diagonal, and
 *   knows nothing of larger prints, crops or pixels.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: common practice of the trade. See [README](README.md#circle-of-confusion).
 *
 * @example circleOfConfusionByDiagonal({ sensorWidth: 36, sensorHeight: 24 }) // 0.02884...
 */
export function circleOfConfusionByDiagonal({ sensorWidth, sensorHeight }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('sensor-height', sensorHeight);
  return Math.hypot(sensorWidth, sensorHeight) / circlesAlongDiagonal;
}

export const circleOfConfusionByDiagonalFormula = {
  gives: 'circle-of-confusion',
  from: ['sensor-width', 'sensor-height'],
  tex: String.raw`\q{circle-of-confusion} = \frac{\sqrt{\q{sensor-width}^2 + \q{sensor-height}^2}}{1500}`,
  evaluate: circleOfConfusionByDiagonal,
  says: 'A fixed share of the sensor’s diagonal: a larger sensor is enlarged less, so it may blur more.',
  source: 'common practice',
  checkedBy: ['common-practice', 'library-exif-composites'],
} as const satisfies Formula<Inputs>;
