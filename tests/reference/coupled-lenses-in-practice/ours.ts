import { effectiveFNumberOfCoupledLenses } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { magnificationOfCoupledLenses } from '#core/rig/magnification-of-coupled-lenses.formula.ts';

type Given = Parameters<typeof magnificationOfCoupledLenses>[0] & {
  mainLensFNumber: number;
  reversedLensFNumber: number;
};

export function ours(given: Given) {
  const magnification = magnificationOfCoupledLenses(given);
  return { magnification, effectiveFNumber: effectiveFNumberOfCoupledLenses({ ...given, magnification }) };
}
