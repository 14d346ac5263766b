import { effectiveFNumberOfCoupledLenses } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLens } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { magnificationOfCoupledLenses } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjective } from '#core/rig/magnification-of-infinity-objective.formula.ts';

type Published = { mainLenses: readonly number[]; reversedLensFocalLength: number };
type Coupled = Parameters<typeof magnificationOfCoupledLenses>[0] & {
  mainLensFNumber: number;
  reversedLensFNumber: number;
};
type Objective = Parameters<typeof magnificationOfInfinityObjective>[0] & {
  numericalAperture: number;
  fNumber: number;
};

export function ours(given: Published | Coupled | Objective) {
  if ('mainLenses' in given) {
    return {
      magnifications: given.mainLenses.map((mainLensFocalLength) =>
        magnificationOfCoupledLenses({ ...given, mainLensFocalLength }),
      ),
    };
  }
  if ('tubeFocalLength' in given) {
    const magnification = magnificationOfInfinityObjective(given);
    return { magnification, effectiveFNumber: effectiveFNumberOfObjectiveOnLens({ ...given, magnification }) };
  }
  const magnification = magnificationOfCoupledLenses(given);
  return { magnification, effectiveFNumber: effectiveFNumberOfCoupledLenses({ ...given, magnification }) };
}
