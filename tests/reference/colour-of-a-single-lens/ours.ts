import { colourSpreadAtSensor } from '#core/rig/colour-spread-at-sensor.formula.ts';
import { colourSpreadOfCloseUpLens } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import { unitWorth } from '#core/quantity/units.ts';

interface Glass {
  focalLength: number;
  violet: number;
  yellow: number;
  red: number;
}

/** A dioptre is one over a metre. */
const metre = unitWorth('mm', 'm') as number;

/** The lens of the problem as a close-up lens, on a camera lens at infinity with the same focal length. */
export function ours({ focalLength, violet, yellow, red }: Glass) {
  const glass = { closeUpPower: metre / focalLength, abbeNumber: (yellow - 1) / (violet - red) };
  return {
    spreadOfLens: colourSpreadOfCloseUpLens({ ...glass, workingDistance: focalLength }),
    spreadAtSensor: colourSpreadAtSensor({ ...glass, focalLength }),
  };
}
