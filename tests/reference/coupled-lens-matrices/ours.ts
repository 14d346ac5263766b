import { magnificationOfCoupledLenses } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjective } from '#core/rig/magnification-of-infinity-objective.formula.ts';

type Published = { mainLenses: readonly number[]; reversedLensFocalLength: number };
type Coupled = Parameters<typeof magnificationOfCoupledLenses>[0];
type Objective = Parameters<typeof magnificationOfInfinityObjective>[0];

export function ours(given: Published | Coupled | Objective) {
  if ('mainLenses' in given) {
    return {
      magnifications: given.mainLenses.map((mainLensFocalLength) =>
        magnificationOfCoupledLenses({ ...given, mainLensFocalLength }),
      ),
    };
  }
  return {
    magnification:
      'tubeFocalLength' in given ? magnificationOfInfinityObjective(given) : magnificationOfCoupledLenses(given),
  };
}
