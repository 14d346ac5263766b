import { colourSpreadAtSensor } from '#core/rig/colour-spread-at-sensor.formula.ts';
import { colourSpreadOfCloseUpLens } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import { effectiveFNumberWithCloseUpLens } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { magnificationOfCloseUpLens } from '#core/rig/magnification-of-close-up-lens.formula.ts';
import { magnificationWithCloseUpLens } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { workingDistanceOfCloseUpLens } from '#core/rig/working-distance-of-close-up-lens.formula.ts';
import { workingDistanceWithCloseUpLens } from '#core/rig/working-distance-with-close-up-lens.formula.ts';

interface AtInfinity {
  abbeNumber: number;
  closeUpPower: number;
  focalLength: number;
  focusMagnification: number;
  fNumber: number;
  pupilMagnification: number;
}

type Focused = AtInfinity & { mainLensSubjectDistance: number; closeUpGap: number };

/** A lens focused close by itself has formulas of its own. */
export function ours(given: AtInfinity | Focused) {
  const isFocused = 'mainLensSubjectDistance' in given;
  const workingDistance = isFocused ? workingDistanceWithCloseUpLens(given) : workingDistanceOfCloseUpLens(given);
  return {
    magnification: isFocused ? magnificationWithCloseUpLens(given) : magnificationOfCloseUpLens(given),
    workingDistance,
    colourSpread: colourSpreadOfCloseUpLens({ ...given, workingDistance }),
    ...(isFocused ? {} : { colourSpreadAtSensor: colourSpreadAtSensor(given) }),
    effectiveFNumber: effectiveFNumberWithCloseUpLens(given),
  };
}
