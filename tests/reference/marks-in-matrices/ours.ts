import { angleOfViewFar } from '#core/gaussian/angle-of-view-far.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { exitPupil } from '#core/gaussian/exit-pupil.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { focusTravel } from '#core/gaussian/focus-travel.formula.ts';
import { magnificationAtFocusDistance } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { workingDistanceFromMarks } from '#core/gaussian/working-distance-from-marks.formula.ts';
import type { Named } from '#core/quantity/formula.ts';

type Given = Named<
  | 'focal-length'
  | 'f-number'
  | 'pupil-magnification'
  | 'principal-separation'
  | 'focus-distance'
  | 'register-distance'
  | 'barrel-length'
  | 'sensor-width'
>;

/** What a lens's marks measure. */
export function ours(given: Given) {
  const magnification = magnificationAtFocusDistance(given);
  return {
    entrancePupil: entrancePupil(given),
    exitPupil: exitPupil(given),
    angleOfView: angleOfViewFar(given),
    magnification,
    focusTravel: focusTravel({ ...given, magnification }),
    fieldWidth: fieldWidth({ ...given, magnification }),
    workingDistance: workingDistanceFromMarks(given),
  };
}
