import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { coneOfLens } from '#core/depth/cone.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';

interface Lens {
  focalLength: number;
  fNumber: number;
  circleOfConfusion: number;
  magnification: number;
  pupilMagnification: number;
}

type CloseUp = Pick<Lens, 'fNumber' | 'circleOfConfusion' | 'magnification'>;

/** Rows that give a focal length ask for the exact depth, by the pupil and by m, N_w and 1/u; the others for the close-up form of a symmetric lens. */
export function ours(given: Lens | CloseUp) {
  if ('focalLength' in given) {
    return {
      depth: depthOfField({
        ...given,
        entrancePupil: entrancePupil(given),
        entrancePupilDistance: entrancePupilDistance(given),
      }),
      depthByCone: depthOfFieldOfCone({ ...coneOfLens(given), circleOfConfusion: given.circleOfConfusion }),
    };
  }
  return {
    closeUpDepth: depthOfFieldCloseUp({
      ...given,
      effectiveFNumber: effectiveFNumber({ ...given, pupilMagnification: 1 }),
    }),
  };
}
