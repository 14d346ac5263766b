import { OutOfRange, requireFinite, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'register-distance' | 'extension' | 'front-principal-depth' | 'focal-length';

/**
 * What a lens turned round gives: its old H now looks at the sensor, and mount, rings and front glass hold it away.
 *
 * m = (R + e + h)/f − 1
 *
 * @param given.registerDistance *R*, of the camera, flange to sensor, mm, above 0
 * @param given.extension *e*, all that stands between camera flange and front rim, the reversing ring included, mm, 0 or above
 * @param given.frontPrincipalDepth *h*, from the front rim back to H, mm, of either sign
 * @param given.focalLength *f*, at its focus setting, mm, above 0
 * @returns *m*, above 0. The shorter the lens, the stronger: only *f* is divided by. Its own register does not enter.
 * @throws OutOfRange for values out of range, and for a focal length too long to focus on anything in front of it
 *
 * Assumes Gaussian optics in air, and a rim that is what the ring screws into.
 * Source: *s'* = f (1 + m) with H for H'; derived in [README](README.md#a-lens-turned-round).
 *
 * @example magnificationOfReversedLens({ registerDistance: 44, extension: 4, frontPrincipalDepth: 36, focalLength: 28 }) // 2
 */
export function magnificationOfReversedLens({
  registerDistance,
  extension,
  frontPrincipalDepth,
  focalLength,
}: Named<Inputs>): number {
  requirePositive('register-distance', registerDistance);
  requireNotNegative('extension', extension);
  requireFinite('front-principal-depth', frontPrincipalDepth);
  requirePositive('focal-length', focalLength);
  const imageDistance = registerDistance + extension + frontPrincipalDepth;
  if (imageDistance <= focalLength) {
    throw new OutOfRange(
      'focal-length',
      focalLength,
      `below ${imageDistance}, which is all that holds the lens from the sensor`,
    );
  }
  return imageDistance / focalLength - 1;
}

export const magnificationOfReversedLensFormula = {
  gives: 'magnification',
  from: ['register-distance', 'extension', 'front-principal-depth', 'focal-length'],
  tex: String.raw`\q{magnification} = \frac{\q{register-distance} + \q{extension} + \q{front-principal-depth}}{\q{focal-length}} - 1`,
  evaluate: magnificationOfReversedLens,
  says: 'Reversed, a short lens stands many of its focal lengths from the sensor: the shorter, the stronger.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-lens-matrices', 'reversed-surface-by-surface'],
  // A lens longer than what holds it away focuses on nothing.
  sample: { 'register-distance': [40, 120], 'front-principal-depth': [0, 300], 'focal-length': [4, 39] },
} as const satisfies Formula<Inputs>;
