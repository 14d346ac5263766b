import { converterFactorWithRingBehind } from '#core/rig/converter-factor-with-ring-behind.formula.ts';
import { effectiveFNumberWithConverter } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { magnificationWithConverter } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingBehindConverter } from '#core/rig/magnification-with-ring-behind-converter.formula.ts';
import { magnificationWithRingsAroundConverter } from '#core/rig/magnification-with-rings-around-converter.formula.ts';
import { workingDistanceWithConverter } from '#core/rig/working-distance-with-converter.formula.ts';

interface Converted {
  converterFactor: number;
  converterLength: number;
  focalLength: number;
  frontPrincipalDepth: number;
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

/** By the plain rule where there is one: rings before the converter alone, or one behind it and the lens at infinity. */
function magnificationOf(given: Converted) {
  if (given.ringBehind === 0) return magnificationWithConverter(given);
  if (given.focusMagnification === 0 && given.extension === 0)
    return magnificationWithRingBehindConverter({ ...given, extension: given.ringBehind });
  return undefined;
}

export function ours(given: Converted | FarAway) {
  if ('factors' in given) {
    return {
      fNumbers: given.factors.map((converterFactor) =>
        effectiveFNumberWithConverter({ fNumber: given.farFNumber, converterFactor, ...far }),
      ),
    };
  }
  const rings = { rearRingExtension: given.ringBehind, frontRingExtension: given.extension };
  const workingConverterFactor = converterFactorWithRingBehind({ ...given, ...rings });
  const magnification = magnificationWithRingsAroundConverter({ ...given, ...rings, workingConverterFactor });
  const working = { ...given, magnification, converterFactor: workingConverterFactor };
  return {
    // The plain rule and the one for rings on both sides are one where both hold: both are met by the row.
    magnification: magnificationOf(given) ?? magnification,
    magnificationByBothSides: magnification,
    effectiveFNumber: effectiveFNumberWithConverter(working),
    workingDistance: workingDistanceWithConverter(working),
  };
}
