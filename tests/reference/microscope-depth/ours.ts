import { combinedDepth } from '#core/depth/combined-depth.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Objectives {
  wavelength: number;
  circleOfConfusion: number;
  magnification: number[];
  numericalAperture: number[];
}

export const ours = oursById({
  'wave-depth': ({ wavelength, numericalAperture }: Objectives) => ({
    depth: numericalAperture.map((na) => waveDepth({ wavelength, numericalAperture: na })),
  }),
  // The formula's tangent for a sine: N_w = m/(2 NA), with which e/(M NA) is the close-up depth of field.
  'total-depth': ({ wavelength, circleOfConfusion, magnification, numericalAperture }: Objectives) => ({
    depth: magnification.map((m, k) => {
      const na = numericalAperture[k] as number;
      return combinedDepth({
        waveDepth: waveDepth({ wavelength, numericalAperture: na }),
        depthOfField: depthOfFieldCloseUp({ circleOfConfusion, effectiveFNumber: m / (2 * na), magnification: m }),
      });
    }),
  }),
});
