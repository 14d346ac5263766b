import type { LensByPoints } from '#site/figures/side-view/lens-on-camera.ts';
import { crateRegister } from '#site/state/lens-marks.ts';

/** From the rim to H, and the shortest barrel that is drawn, mm. */
const depth = 10;
const shortest = 8;

/**
 * A plain lens of any focal length set to infinity, for chains in which focal length and opening alone decide: its body has to be drawn somehow.
 *
 * Its principal planes are one, behind its rim, so that the cone bends where the glass may be.
 */
export function plainLens(focalLength: number, fNumber: number, registerDistance = crateRegister): LensByPoints {
  return {
    focalLength,
    fNumber,
    registerDistance,
    focusMagnification: 0,
    pupilMagnification: 1,
    principalSeparation: 0,
    // The rim stands before the flange in any case.
    frontPrincipalDepth: Math.max(depth, registerDistance + shortest - focalLength),
  };
}
