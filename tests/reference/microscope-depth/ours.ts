import { combinedDepth } from '#core/depth/combined-depth.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { effectiveFNumberOfObjective } from '#core/rig/effective-f-number-of-objective.formula.ts';
import { effectiveFNumberOfObjectiveOnLens } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { magnificationOfInfinityObjective } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

type OnLens = Parameters<typeof magnificationOfInfinityObjective>[0] & { numericalAperture: number; fNumber: number };

interface Objectives {
  wavelength: number;
  circleOfConfusion: number;
  magnification: number[];
  numericalAperture: number[];
}

const waves = ({ wavelength, numericalAperture }: Objectives) => ({
  depth: numericalAperture.map((na) => waveDepth({ wavelength, numericalAperture: na })),
});

const effective = ({ magnification, numericalAperture }: Objectives) =>
  magnification.map((m, k) =>
    effectiveFNumberOfObjective({ magnification: m, numericalAperture: numericalAperture[k] as number }),
  );

export const ours = oursById({
  'wave-depth': waves,
  'murphy-table': waves,
  'objective-at-20': (given: Objectives) => ({ effectiveFNumber: effective(given) }),
  'objective-on-half-its-tube': (given: OnLens) => {
    const magnification = magnificationOfInfinityObjective(given);
    return { magnification, effectiveFNumber: effectiveFNumberOfObjectiveOnLens({ ...given, magnification }) };
  },
  'murphy-brightness': (given: Objectives) => ({
    brightness: effective(given).map(
      (fNumber, k) => (1e4 * (given.numericalAperture[k] as number) ** 2) / (2 * fNumber) ** 2,
    ),
  }),
  // The formula's tangent for a sine: N_w = m/(2 NA), with which e/(M NA) is the close-up depth of field.
  'total-depth': ({ wavelength, circleOfConfusion, magnification, numericalAperture }: Objectives) => ({
    depth: magnification.map((m, k) => {
      const na = numericalAperture[k] as number;
      return combinedDepth({
        waveDepth: waveDepth({ wavelength, numericalAperture: na }),
        depthOfField: depthOfFieldCloseUp({
          circleOfConfusion,
          effectiveFNumber: effectiveFNumberOfObjective({ magnification: m, numericalAperture: na }),
          magnification: m,
        }),
      });
    }),
  }),
});
