import {
  cameraPart,
  drawnWithRim,
  lensPart,
  type DrawnChain,
  type LensByPoints,
} from '#site/figures/side-view/lens-on-camera.ts';
import { bodies } from '#site/state/crate.ts';

/** The camera that all lenses of this lesson are mounted on. */
export const camera = cameraPart(bodies['body-36']['sensor-width']);

/** Place of the lens in the chain. */
export const lensAt = 1;

type WholeLens = Pick<LensByPoints, 'focalLength' | 'principalSeparation' | 'frontPrincipalDepth'> & {
  readonly magnification: number;
};

/** A lens moved as a whole to a magnification. Aperture and pupils are no matter of this lesson: everyday ones. */
export function wholeLens({ magnification, ...points }: WholeLens): DrawnChain {
  const lens = { ...points, pupilMagnification: 1, fNumber: 8, focusMagnification: magnification };
  return drawnWithRim(lens, (frontPrincipalDepth) => [camera, lensPart({ ...lens, frontPrincipalDepth })]);
}
