import { closeUpPowerForMagnification } from '#core/rig/close-up-power-for-magnification.formula.ts';
import { colourBlur } from '#core/rig/colour-blur.formula.ts';
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

/** Size and distance: a lens focused close by itself has formulas of its own. */
const sharp = (given: AtInfinity | Focused) =>
  'mainLensSubjectDistance' in given
    ? { magnification: magnificationWithCloseUpLens(given), workingDistance: workingDistanceWithCloseUpLens(given) }
    : { magnification: magnificationOfCloseUpLens(given), workingDistance: workingDistanceOfCloseUpLens(given) };

interface Wanted {
  focalLength: number;
  magnification: number;
}

/** What the core makes of a row, in base units: the keys of its `expected`. */
export function ours(given: AtInfinity | Focused | Wanted) {
  if (!('closeUpPower' in given)) return { closeUpPower: closeUpPowerForMagnification(given) };
  const { magnification, workingDistance } = sharp(given);
  const effectiveFNumber = effectiveFNumberWithCloseUpLens(given);
  const colourSpread = colourSpreadOfCloseUpLens({ ...given, workingDistance });
  return {
    magnification,
    workingDistance,
    effectiveFNumber,
    colourSpread,
    colourBlur: colourBlur({ magnification, colourSpread, effectiveFNumber }),
  };
}
