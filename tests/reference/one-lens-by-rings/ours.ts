import { fitDistances } from '#core/rig/fit/fit-distances.ts';
import { fitSettings } from '#core/rig/fit/fit-settings.ts';
import { studentTails } from '#core/rig/fit/student-tails.ts';
import type { Answer } from '#tests/support/reference-case.ts';

type Inputs =
  | { t: number; degreesOfFreedom: number }
  | {
      magnification: readonly number[];
      workingDistance: readonly number[];
      settings?: readonly string[];
      extension?: readonly number[];
      /** Standard error of the field width as a share of it. */
      fieldShare?: readonly number[];
    };

export const ours = (inputs: Inputs): Answer => {
  if ('t' in inputs) return { chance: studentTails(inputs.t, inputs.degreesOfFreedom) };
  const { magnification, workingDistance, settings, extension, fieldShare } = inputs;
  const photographs = magnification.map((m, at) => ({
    fieldWidth: 36 / m,
    sensorWidth: 36,
    extension: extension?.[at] ?? 0,
    setting: settings?.[at] ?? '',
    workingDistance: workingDistance[at]!,
    ...(fieldShare && { fieldWidthError: (36 / m) * fieldShare[at]! }),
  }));
  if (!settings) {
    const { focalLength, frontPrincipalDepth } = fitDistances(photographs)!;
    return {
      focalLength: focalLength.value,
      focalLengthError: focalLength.standardError!,
      frontPrincipalDepth: frontPrincipalDepth.value,
      frontPrincipalDepthError: frontPrincipalDepth.standardError!,
    };
  }
  const fit = fitSettings(photographs);
  if (fit.outcome !== 'fitted') throw new Error(fit.because);
  return {
    focalLength: fit.focalLength.value,
    focalLengthError: fit.focalLength.standardError!,
    focusMagnification: fit.settings.map((one) => one.focusMagnification.value),
    focusMagnificationError: fit.settings.map((one) => one.focusMagnification.standardError!),
    frontPrincipalDepth: fit.frontPrincipalDepth!.value,
    frontPrincipalDepthError: fit.frontPrincipalDepth!.standardError!,
    studentised: fit.photographs.map((one) => one.studentised!),
    focalLengthWithout: fit.photographs.map((one) => one.focalLengthWithout!),
  };
};
