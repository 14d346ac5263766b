import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { farLimitOfCone } from '#core/depth/far-limit-of-cone.formula.ts';
import { nearLimitOfCone } from '#core/depth/near-limit-of-cone.formula.ts';

interface Blurred {
  circleOfConfusion: number;
  magnification: number;
  effectiveFNumber?: number;
  imageAperture?: number;
}

/** The book speaks of no pupil: it lies infinitely far away. Its slender cone has the f-number 1/(2 NA). */
export function ours({ imageAperture = NaN, effectiveFNumber = 1 / (2 * imageAperture), ...given }: Blurred) {
  const cone = { ...given, effectiveFNumber, inverseEntrancePupilDistance: 0 };
  return { near: nearLimitOfCone(cone), far: farLimitOfCone(cone), depth: depthOfFieldOfCone(cone) };
}
