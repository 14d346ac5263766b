import { effectiveFNumberOfReversedLens } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { entrancePupilDistanceOfReversedLens } from '#core/rig/entrance-pupil-distance-of-reversed-lens.formula.ts';
import { entrancePupilOfReversedLens } from '#core/rig/entrance-pupil-of-reversed-lens.formula.ts';
import { extensionForReversedLens } from '#core/rig/extension-for-reversed-lens.formula.ts';
import { magnificationOfReversedLens } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { workingDistanceOfRackedOutReversedLens } from '#core/rig/working-distance-of-racked-out-reversed-lens.formula.ts';

interface Reversed {
  registerDistance: number;
  extension: number;
  reversedLensRegisterDistance: number;
  focusTravel: number;
  rearProtrusion: number;
  focalLength: number;
  frontPrincipalDepth: number;
  pupilMagnification: number;
  fNumber: number;
}

export function ours(given: Reversed) {
  const magnification = magnificationOfReversedLens(given);
  const lens = { ...given, magnification };
  return {
    magnification,
    extension: extensionForReversedLens(lens),
    workingDistance: workingDistanceOfRackedOutReversedLens(lens),
    entrancePupilDistance: entrancePupilDistanceOfReversedLens(lens),
    entrancePupil: entrancePupilOfReversedLens(lens),
    effectiveFNumber: effectiveFNumberOfReversedLens(lens),
  };
}
