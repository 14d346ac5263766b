import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'focal-length';

/**
 * The angle from side to side that a picture of far things takes in.
 *
 * angle of view = 2 arctan(W_x/(2 f))
 *
 * @param given.sensorWidth *W_x*, mm, above 0; the height gives the angle from top to bottom
 * @param given.focalLength *f*, mm, above 0
 * @returns rad
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a lens set to infinity and without distortion: `angleOfView` has it close up; a fisheye sees more.
 * Source: light from the side of the picture passes H and H′ at one angle and meets the sensor *f* behind H′. See [README](README.md#field).
 *
 * @example angleOfViewFar({ sensorWidth: 36, focalLength: 18 }) // 1.570796...
 */
export function angleOfViewFar({ sensorWidth, focalLength }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('focal-length', focalLength);
  return 2 * Math.atan(sensorWidth / (2 * focalLength));
}

export const angleOfViewFarFormula = {
  gives: 'angle-of-view',
  from: ['sensor-width', 'focal-length'],
  tex: String.raw`\q{angle-of-view} = 2\arctan\frac{\q{sensor-width}}{2\,\q{focal-length}}`,
  evaluate: angleOfViewFar,
  says: 'A long focal length takes in a narrow angle, a large sensor a wide one.',
  source: 'the nodal ray from the side of the picture, in any textbook',
  checkedBy: ['marks-in-matrices'],
} as const satisfies Formula<Inputs>;
