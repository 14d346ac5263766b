import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'scale-change' | 'sensor-width' | 'pixel-pitch';

/**
 * How far a change of scale moves what lies at the side of the frame.
 *
 * edge shift = scale change · W_x / (2 p)
 *
 * @param given.scaleChange from one frame to the next; 0 or above
 * @param given.sensorWidth *W_x*, mm; above 0
 * @param given.pixelPitch *p*, mm; above 0
 * @returns pixels, at half the width from the middle; corners move by a fifth more. What is not set right before merging shows
 *   as double edges from about one pixel on.
 * @throws OutOfRange for anything not finite, a change below zero, and a sensor or a pitch of zero or below
 *
 * Assumes that the axis meets the middle of the sensor.
 * Source: definition of scale. Derived in [README](README.md#edge).
 *
 * @example edgeShift({ scaleChange: 0.001, sensorWidth: 36, pixelPitch: 0.006 }) // 3
 */
export function edgeShift({ scaleChange, sensorWidth, pixelPitch }: Named<Inputs>): number {
  requireNotNegative('scale-change', scaleChange);
  requirePositive('sensor-width', sensorWidth);
  requirePositive('pixel-pitch', pixelPitch);
  return (scaleChange * sensorWidth) / (2 * pixelPitch);
}

export const edgeShiftFormula = {
  gives: 'edge-shift',
  from: ['scale-change', 'sensor-width', 'pixel-pitch'],
  tex: String.raw`\q{edge-shift} = \frac{\q{scale-change}\,\q{sensor-width}}{2\,\q{pixel-pitch}}`,
  evaluate: edgeShift,
  says: 'The middle stays, the sides move: on 6000 pixels a growth of one thousandth is three pixels there.',
  source: 'definition of scale',
  checkedBy: ['pupils-in-matrices'],
} as const satisfies Formula<Inputs>;
