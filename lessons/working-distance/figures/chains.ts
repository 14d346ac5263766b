import type { Named } from '#core/quantity/formula.ts';
import type { Part } from '#core/rig/part.ts';
import {
  cameraPart,
  contradiction,
  drawnWithRim,
  lensPart,
  type DrawnChain,
} from '#site/figures/side-view/lens-on-camera.ts';
import type { ofLens } from '#site/state/lens-in-use.ts';

/** What of the bench a chain is put together from, besides the lens. */
export const ofView = ['magnification', 'f-number', 'sensor-width'] as const;

export type LensInView = Readonly<Named<(typeof ofLens)[number]>>;
type Given = LensInView & Readonly<Named<(typeof ofView)[number]>>;

/** Camera and lens at a magnification; past the end of its own focusing on a ring as long as it takes. */
export function chainOf(given: Given): DrawnChain & { readonly extension: number; readonly notice?: string } {
  const { magnification, focalLength, sensorWidth, rimDiameter } = given;
  const focusMagnification = Math.min(magnification, given.focusMagnification);
  const extension = focalLength * (magnification - focusMagnification);
  const lens = { ...given, focusMagnification };
  const ring: readonly Part[] = extension > 0 ? [{ part: 'ring', extension }] : [];
  const drawn = drawnWithRim(lens, (frontPrincipalDepth) => [
    cameraPart(sensorWidth),
    ...ring,
    { ...lensPart({ ...lens, frontPrincipalDepth }), rimDiameter },
  ]);
  return { ...drawn, extension, ...(drawn.isContradictory && { notice: contradiction }) };
}

/** From sensor to subject, mm. */
export const focusDistanceOf = ({ focalLength, principalSeparation }: LensInView, magnification: number) =>
  focalLength * (2 + magnification + 1 / magnification) + principalSeparation;
