import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'magnification' | 'register-distance' | 'front-principal-depth';

/**
 * What must stand between camera flange and front rim of a lens turned round for a wanted magnification.
 *
 * e = f (1 + m) − R − h
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.magnification *m*, wanted, above 0
 * @param given.registerDistance *R*, of the camera, mm, above 0
 * @param given.frontPrincipalDepth *h*, from the front rim back to H, mm, of either sign
 * @returns *e*, mm, 0 or above, the reversing ring included.
 * @throws OutOfRange for values out of range, and for a magnification that the lens exceeds with nothing in between
 *
 * Assumes a rim that is what the ring screws into.
 * Source: m = (R + e + h)/f − 1 solved for e; derived in [README](README.md#a-lens-turned-round).
 *
 * @example extensionForReversedLens({ focalLength: 28, magnification: 2, registerDistance: 44, frontPrincipalDepth: 36 }) // 4
 */
export function extensionForReversedLens({
  focalLength,
  magnification,
  registerDistance,
  frontPrincipalDepth,
}: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('magnification', magnification);
  requirePositive('register-distance', registerDistance);
  requireFinite('front-principal-depth', frontPrincipalDepth);
  const extension = focalLength * (1 + magnification) - registerDistance - frontPrincipalDepth;
  if (extension < 0) {
    const least = (registerDistance + frontPrincipalDepth) / focalLength - 1;
    throw new OutOfRange('magnification', magnification, `at least ${least}, which the lens gives on the bare camera`);
  }
  return extension;
}

export const extensionForReversedLensFormula = {
  gives: 'extension',
  from: ['focal-length', 'magnification', 'register-distance', 'front-principal-depth'],
  tex: String.raw`\q{extension} = \q{focal-length}\left(1 + \q{magnification}\right) - \q{register-distance} - \q{front-principal-depth}`,
  evaluate: extensionForReversedLens,
  says: 'From H to the sensor you need f (1 + m); mount and lens provide part of it, rings the rest.',
  source: 'derived in core/rig/README.md#a-lens-turned-round',
  checkedBy: ['reversed-lens-matrices', 'reversed-surface-by-surface'],
  // A short lens exceeds a small magnification with nothing in between.
  sample: { 'focal-length': [200, 800], 'register-distance': [5, 100], 'front-principal-depth': [-200, 100] },
} as const satisfies Formula<Inputs>;
