import { effectiveFNumberWithConverter } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationWithConverter } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingBehindConverter } from '#core/rig/magnification-with-ring-behind-converter.formula.ts';

interface Converted {
  converterFactor: number;
  focalLength: number;
  fNumber: number;
  pupilMagnification: number;
  ringBehind: number;
  extension: number;
  focusMagnification: number;
}

interface FarAway {
  farFNumber: number;
  factors: readonly number[];
}

/** So far away that the magnification takes no part. */
const far = { magnification: 1e-9, pupilMagnification: 1 };

export function ours(given: Converted | FarAway) {
  if ('factors' in given) {
    return {
      fNumbers: given.factors.map((converterFactor) =>
        effectiveFNumberWithConverter({ fNumber: given.farFNumber, converterFactor, ...far }),
      ),
    };
  }
  if (given.ringBehind > 0)
    return { magnification: magnificationWithRingBehindConverter({ ...given, extension: given.ringBehind }) };
  const magnification = magnificationWithConverter(given);
  return { magnification, effectiveFNumber: effectiveFNumberWithConverter({ ...given, magnification }) };
}
