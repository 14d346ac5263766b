import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'sensor-height';

/** Diagonal of a 36 × 24 mm frame, √(36² + 24²) = 43.266615305567875 mm. */
export const referenceDiagonal = Math.hypot(36, 24);

/**
 * How many times a sensor's diagonal goes into that of a 36 × 24 mm frame.
 *
 * crop factor = √(36² + 24²) / √(W_x² + W_y²), lengths in mm
 *
 * @param given.sensorWidth *W_x*, mm, above 0
 * @param given.sensorHeight *W_y*, mm, above 0
 * @returns a pure number, 1 for 36 × 24 mm. It scales the field of view; it does not multiply the magnification.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: common practice of the trade (ratio of diagonals); 36 × 24 mm is the frame to which AS ISO 20954.1:2019, clause 3.7,
 * refers focal lengths. See [README](README.md#field).
 *
 * @example cropFactor({ sensorWidth: 23.5, sensorHeight: 15.6 }) // 1.5339...
 */
export function cropFactor({ sensorWidth, sensorHeight }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('sensor-height', sensorHeight);
  return referenceDiagonal / Math.hypot(sensorWidth, sensorHeight);
}

export const cropFactorFormula = {
  gives: 'crop-factor',
  from: ['sensor-width', 'sensor-height'],
  tex: String.raw`\q{crop-factor} = \frac{\sqrt{36^2 + 24^2}}{\sqrt{\q{sensor-width}^2 + \q{sensor-height}^2}}`,
  evaluate: cropFactor,
  says: 'How many times smaller a sensor’s diagonal is than that of 36 × 24 mm.',
  source: 'common practice; reference frame as in AS ISO 20954.1:2019, clause 3.7',
  checkedBy: ['common-practice', 'crop-factor', 'library-exif-composites'],
} as const satisfies Formula<Inputs>;
