import type { LensByPoints } from '#site/figures/side-view/lens-on-camera.ts';
import { crateRegister, marks } from '#site/state/lens-marks.ts';

/** No barrel is shorter, mm. */
const shortest = 8;

/**
 * A lens of any focal length set to infinity, shaped as the crate's nearest to it: where only focal length and opening count, its body has to
 * be drawn somehow.
 */
export function usualLens(focalLength: number, fNumber: number): LensByPoints {
  const [first, ...others] = Object.values(marks);
  const farFrom = (lens: typeof first) => Math.abs(Math.log(lens!['focal-length'] / focalLength));
  const like = others.reduce((best, lens) => (farFrom(lens) < farFrom(best!) ? lens : best), first)!;
  const scale = focalLength / like['focal-length'];
  const principalSeparation = scale * like['principal-separation'];
  return {
    focalLength,
    fNumber,
    focusMagnification: 0,
    pupilMagnification: like['pupil-magnification'],
    principalSeparation,
    // The rim stands before the flange in any case.
    frontPrincipalDepth: Math.max(
      scale * like['front-principal-depth'],
      crateRegister + shortest - focalLength - principalSeparation,
    ),
  };
}
