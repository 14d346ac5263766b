import { apertureValue } from '#core/exposure/stops.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { bestEffectiveFNumber } from '#core/wave/best-effective-f-number.formula.ts';

interface Spread {
  /** How far apart the images of the nearest and the farthest part lie. */
  focusSpread: readonly number[];
  /** The f-number over the width, in mm, that diffraction gives a point. */
  airyShare: number;
}

/** Spread is depth times the square of the magnification, so that any magnification will do. */
const magnification = 0.05;

export function ours({ focusSpread, airyShare }: Spread) {
  const wavelength = 1 / (airyShare * airyDiameter({ wavelength: 1, effectiveFNumber: 1 }));
  return {
    apertureValue: focusSpread.map((spread) =>
      apertureValue(bestEffectiveFNumber({ magnification, subjectDepth: spread / magnification ** 2, wavelength })),
    ),
  };
}
