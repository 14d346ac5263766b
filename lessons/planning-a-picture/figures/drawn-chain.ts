import type { Named } from '#core/quantity/formula.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import { cameraPart, contradiction, drawnWithRim, lensPart } from '#site/figures/side-view/lens-on-camera.ts';
import { rings } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import type { OfOneLens } from './own-lens.ts';

/** A chain as it is drawn. */
export interface Drawn {
  readonly positions: RigPositions;
  /** What its parts are called; '' for what needs no name. */
  readonly labels: readonly string[];
  readonly notice?: string;
}

type Given = Readonly<Named<OfOneLens | 'sensor-width'>>;

const allRings = rings.reduce((sum, length) => sum + length, 0);

/** One lens on a camera at a magnification; past the end of its own focusing on rings or bellows as long as it takes. */
export function drawnLens(given: Given, name: string): Drawn {
  const focusMagnification = Math.min(given.magnification, given.focusMagnification);
  const extension = given.focalLength * (given.magnification - focusMagnification);
  const lens = { ...given, focusMagnification };
  const { positions, isContradictory } = drawnWithRim(lens, (frontPrincipalDepth) => [
    cameraPart(given.sensorWidth),
    ...(extension > 0 ? [{ part: 'ring', extension } as const] : []),
    lensPart({ ...lens, frontPrincipalDepth }),
  ]);
  const isTooLong = extension > parts.bellows.longest;
  // Nothing between lens and camera is so long: what is drawn there has no name.
  const between = isTooLong ? '' : extension > allRings ? 'bellows' : 'rings';
  const notice = isContradictory ? contradiction : isTooLong ? 'longer than the bellows' : undefined;
  return {
    positions,
    labels: ['', ...(extension > 0 ? [between] : []), name],
    ...(notice && { notice }),
  };
}
