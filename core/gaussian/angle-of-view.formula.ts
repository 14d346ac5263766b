import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'sensor-width' | 'focal-length' | 'magnification' | 'pupil-magnification';

/**
 * The angle from side to side that a picture takes in, as seen from the entrance pupil.
 *
 * angle of view = 2 arctan(W_x/(2 f (1 + m/P)))
 *
 * @param given.sensorWidth *W_x*, mm, above 0; the height gives the angle from top to bottom
 * @param given.focalLength *f*, at the focus setting in use, mm, above 0
 * @param given.magnification *m*, image over subject size, 0 or above: 0 far away
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @returns rad. The usual 2 arctan(W_x/(2f)) is that of a lens at infinity; close up much less is seen.
 * @throws OutOfRange for a magnification below zero, the others not above zero, or anything not finite
 *
 * Assumes a lens without distortion: a fisheye sees more.
 * Source: half the field over the distance u; 2 arctan(d/(2 f (1 + m))) as usually printed has P = 1. Derived in [README](README.md#field).
 *
 * @example angleOfView({ sensorWidth: 36, focalLength: 18, magnification: 0, pupilMagnification: 1 }) // 1.570796...
 */
export function angleOfView({ sensorWidth, focalLength, magnification, pupilMagnification }: Named<Inputs>): number {
  requirePositive('sensor-width', sensorWidth);
  requirePositive('focal-length', focalLength);
  requireNotNegative('magnification', magnification);
  requirePositive('pupil-magnification', pupilMagnification);
  return 2 * Math.atan(sensorWidth / (2 * focalLength * (1 + magnification / pupilMagnification)));
}

export const angleOfViewFormula = {
  gives: 'angle-of-view',
  from: ['sensor-width', 'focal-length', 'magnification', 'pupil-magnification'],
  tex: String.raw`\q{angle-of-view} = 2\arctan\left(\frac{\q{sensor-width}}{2\,\q{focal-length}\left(1 + \frac{\q{magnification}}{\q{pupil-magnification}}\right)}\right)`,
  evaluate: angleOfView,
  says: 'What is printed on lenses is the angle at infinity; at life size a symmetrical lens sees about half of it.',
  source: 'derived in core/gaussian/README.md#field',
  checkedBy: ['angles-tanks-and-lights'],
} as const satisfies Formula<Inputs>;
