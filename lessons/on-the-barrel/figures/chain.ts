import type { Named } from '#core/quantity/formula.ts';
import { cameraPart, drawnWithRim, lensPart, type DrawnChain } from '#site/figures/side-view/lens-on-camera.ts';

/** What of the bench the drawing is put together from. */
export const ofChain = [
  'focal-length',
  'f-number',
  'pupil-magnification',
  'principal-separation',
  'barrel-length',
  'register-distance',
  'sensor-width',
] as const;

/** Camera and lens, the lens moved as a whole to a magnification; rim and flange stand where the barrel says. */
export function chainOf(
  { barrelLength, sensorWidth, ...given }: Readonly<Named<(typeof ofChain)[number]>>,
  magnification: number,
  rimDiameter?: number,
): DrawnChain {
  const { focalLength, principalSeparation, registerDistance } = given;
  const front = registerDistance + barrelLength;
  const lens = {
    ...given,
    focusMagnification: magnification,
    frontPrincipalDepth: front - focalLength * (1 + magnification) - principalSeparation,
  };
  return drawnWithRim(lens, (frontPrincipalDepth) => [
    cameraPart(sensorWidth, registerDistance),
    { ...lensPart({ ...lens, frontPrincipalDepth }), ...(rimDiameter !== undefined && { rimDiameter }) },
  ]);
}
