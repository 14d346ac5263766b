import { colourBlur } from '#core/rig/colour-blur.formula.ts';
import { colourSpreadOfCloseUpLens } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import { unitWorth } from '#core/quantity/units.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Glass {
  focalLength: number;
  /** Its foci part by one in so many parts of their distance. */
  partOfFocus: number;
  aperture: number;
}

/** A dioptre is one over a metre. */
const metre = unitWorth('mm', 'm') as number;

/**
 * The circle that holds both colours, halfway between their foci: half the blur that one has in the other's. A lens that looks at far light
 * scatters at its focus what the same lens scatters as a close-up lens, on a camera lens at infinity of its own focal length.
 */
function leastCircle({ focalLength, partOfFocus, aperture }: Glass): number {
  const lens = { closeUpPower: metre / focalLength, abbeNumber: partOfFocus };
  const colourSpread = colourSpreadOfCloseUpLens({ ...lens, workingDistance: focalLength });
  return colourBlur({ magnification: 1, colourSpread, effectiveFNumber: focalLength / aperture }) / 2;
}

const inMillimetres = (glass: Glass) => ({ leastCircle: leastCircle(glass) });
const ofAperture = (glass: Glass) => ({ leastCircleOfAperture: leastCircle(glass) / glass.aperture });

export const ours = oursById({
  'opticks-spread': ofAperture,
  'opticks-aperture': inMillimetres,
  'opticks-twice-as-far': ({ focalLength, partOfFocus }: Omit<Glass, 'aperture'>) => {
    const workingDistance = 2 * focalLength;
    const spread = colourSpreadOfCloseUpLens({
      workingDistance,
      closeUpPower: metre / focalLength,
      abbeNumber: partOfFocus,
    });
    return { partOfDistance: spread / workingDistance };
  },
  'letter-of-1672': ofAperture,
  'simple-refractor': inMillimetres,
});
