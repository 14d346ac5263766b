import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { effectiveFNumberOfReversedLens } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';

interface Lens {
  fNumber: number;
  magnification: number;
  pupilMagnification: number;
}

export function ours(given: Lens) {
  return {
    effectiveFNumber: effectiveFNumberOfReversedLens(given),
    unreversedEffectiveFNumber: effectiveFNumber(given),
  };
}
