import { colourSpreadAtSensor } from '#core/rig/colour-spread-at-sensor.formula.ts';
import { colourSpreadOfCloseUpLens } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import { effectiveFNumberWithCloseUpLens } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { magnificationOfCloseUpLens } from '#core/rig/magnification-of-close-up-lens.formula.ts';
import { magnificationWithCloseUpLens } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { workingDistanceOfCloseUpLens } from '#core/rig/working-distance-of-close-up-lens.formula.ts';
import { workingDistanceWithCloseUpLens } from '#core/rig/working-distance-with-close-up-lens.formula.ts';

interface Given {
  abbeNumber: number;
  closeUpPower: number;
  closeUpGap: number;
  focalLength: number;
  focusMagnification: number;
  fNumber: number;
  pupilMagnification: number;
}

/** A lens at infinity has short rules of its own. */
const byShortRules = (given: Given) => ({
  magnificationByShortRule: magnificationOfCloseUpLens(given),
  workingDistanceByShortRule: workingDistanceOfCloseUpLens(given),
  colourSpreadAtSensor: colourSpreadAtSensor(given),
});

/** What the core makes of a row, in base units: the keys of its `expected`. */
export function ours(given: Given) {
  const magnification = magnificationWithCloseUpLens(given);
  const workingDistance = workingDistanceWithCloseUpLens({ ...given, magnification });
  return {
    magnification,
    workingDistance,
    colourSpread: colourSpreadOfCloseUpLens({ ...given, workingDistance }),
    effectiveFNumber: effectiveFNumberWithCloseUpLens(given),
    ...(given.focusMagnification === 0 ? byShortRules(given) : {}),
  };
}
