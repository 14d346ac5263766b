import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fNumberFromAperture } from '#core/gaussian/f-number-from-aperture.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { numericalAperture } from '#core/gaussian/numerical-aperture.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Lens {
  fNumber: number;
  magnification: number;
  pupilMagnification: number;
}

function working(lens: Lens) {
  const cone = effectiveFNumber(lens);
  return { effectiveFNumber: cone, lightLoss: lightLoss({ effectiveFNumber: cone, fNumber: lens.fNumber }) };
}

/** An objective with its specimen in the focal plane: a lens that images at a magnification without limit. */
function objective(given: { focalLength: number; entrancePupil: number }) {
  const fNumber = fNumberFromAperture(given);
  const magnification = 1e9;
  const cone = effectiveFNumber({ fNumber, magnification, pupilMagnification: 1 });
  return { fNumber, numericalAperture: numericalAperture({ magnification, effectiveFNumber: cone }) };
}

export const ours = oursById({
  'working-1': working,
  'working-2': working,
  'working-3': working,
  'working-4': working,
  'na-objective-f4': objective,
  'na-objective-f8': objective,
  'na-objective-f16': objective,
  'na-telecentric': (lens: { effectiveFNumber: number; magnification: number }) => ({
    numericalAperture: numericalAperture(lens),
  }),
});
