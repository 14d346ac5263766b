import { luminousExposure } from '#core/exposure/luminous-exposure.ts';
import { midToneExposure, photonsPerLuxSecond, saturationExposure } from '#core/exposure/photons.ts';
import { signalToNoise } from '#core/exposure/signal-to-noise.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

type Numbers = readonly number[];

export const ours = oursById({
  'iso-12232-speeds': ({ iso }: { iso: Numbers }) => ({
    saturation: iso.map(saturationExposure),
    midTone: iso.map(midToneExposure),
  }),
  'iso-12232-exposure': (given: { luminance: number; effectiveFNumber: Numbers; exposureTime: number }) => ({
    exposure: given.effectiveFNumber.map((effectiveFNumber) => luminousExposure({ ...given, effectiveFNumber })),
  }),
  'si-photons': () => ({ photons: photonsPerLuxSecond }),
  'four-hundred-photons': (given: { electrons: number; readNoise: number }) => ({
    scatter: given.electrons / signalToNoise(given),
  }),
  'ccd-equation': ({ electrons, readNoise }: { electrons: Numbers; readNoise: Numbers }) => ({
    signalToNoise: electrons.map((count, index) => signalToNoise({ electrons: count, readNoise: readNoise[index]! })),
  }),
});
