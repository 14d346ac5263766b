import { depthOfFieldInMedium } from '#core/depth/depth-of-field-in-medium.formula.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { farLimitOfCone } from '#core/depth/far-limit-of-cone.formula.ts';
import { nearLimitOfCone } from '#core/depth/near-limit-of-cone.formula.ts';
import { ambientShareOfFullExposure } from '#core/exposure/ambient-share-of-full-exposure.formula.ts';
import { stackTimeInTurn } from '#core/stack/stack-time-in-turn.formula.ts';
import { defocusAberrationOfDepth } from '#core/wave/defocus-aberration-of-depth.formula.ts';

type Of<Compute extends (given: never) => unknown> = Parameters<Compute>[0];
type Cone = Of<typeof nearLimitOfCone>;
type Tank = Of<typeof depthOfFieldInMedium>;
type Defocus = Of<typeof defocusAberrationOfDepth>;
type Queue = Of<typeof stackTimeInTurn>;
interface Shares {
  readonly stops: readonly number[];
}

export function ours(given: Cone | Tank | Defocus | Queue | Shares) {
  if ('circleOfConfusion' in given)
    return { near: nearLimitOfCone(given), far: farLimitOfCone(given), depth: depthOfFieldOfCone(given) };
  if ('refractiveIndex' in given) return { depth: depthOfFieldInMedium(given) };
  if ('wavelength' in given) return { waves: defocusAberrationOfDepth(given) };
  if ('frameCount' in given) return { time: stackTimeInTurn(given) };
  return {
    share: given.stops.map((ambientUnderexposure) => ambientShareOfFullExposure({ ambientUnderexposure })),
  };
}
