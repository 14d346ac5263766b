import { blurDiscTransfer } from '#core/wave/blur-disc-transfer.ts';
import { transferAt } from '#core/wave/optical-transfer.ts';
import { photopicLight, photopicPeak } from '#core/wave/photopic-light.ts';
import { defocusAberration } from '#core/wave/defocus-aberration.formula.ts';
import type { View } from './view.ts';

/** What the optics pass at each frequency, whatever its direction: values at 0, *step*, 2 *step*, ... line pairs per mm on the sensor. */
export interface RadialOtf {
  readonly step: number;
  readonly values: Float32Array;
}

type Optics = Pick<View, 'effectiveFNumber' | 'wavelength' | 'sphericalAberration'>;

/** Beyond so many wavelengths of defocus the blur disc of geometry stands for waves, at a hundredth of the time. */
const mostWaves = 50;

/**
 * The optical transfer of a place out of focus, along a radius of the frequency plane.
 *
 * @param optics see {@link View}
 * @param blur *b* with a sign: exact geometric diameter on the sensor, mm, negative nearer than the sharp plane
 * @param highest frequency that is asked for, line pairs per millimetre
 * @returns transfers for linear interpolation: within 5e-4
 *
 * Known at a tenth of the disc's own period and at 40 places up to the cutoff, cubic in between.
 */
export function radialOtf(optics: Optics, blur: number, highest: number): RadialOtf {
  const counted = optics.wavelength ?? photopicPeak;
  const spherical = optics.sphericalAberration ?? 0;
  const fNumber = optics.effectiveFNumber;
  const size = Math.abs(blur);
  const waves =
    Math.sign(blur) * defocusAberration({ defocusBlur: size, wavelength: counted, effectiveFNumber: fNumber });
  const lights = optics.wavelength ? [{ wavelength: optics.wavelength, share: 1 }] : photopicLight;
  const cutoff = 1 / (Math.min(...lights.map(({ wavelength }) => wavelength)) * fNumber);
  const end = Math.min(highest, cutoff, Math.abs(waves) > mostWaves ? 300 / size : Infinity);

  const oneLight = (frequency: number, wavelength: number) => {
    const factor = counted / wavelength;
    const pupil = { defocusAberration: waves * factor, sphericalAberration: spherical * factor };
    return transferAt(pupil, frequency * wavelength * fNumber);
  };
  const at = (frequency: number) =>
    Math.abs(waves) > mostWaves
      ? blurDiscTransfer({ defocusBlur: size, spatialFrequency: frequency })
      : lights.reduce((sum, { wavelength, share }) => sum + share * oneLight(frequency, wavelength), 0);

  const spacing = 1 / (10 * (size + fNumber * counted * (4 + 8 * Math.abs(spherical))));
  const known = Math.max(4, Math.ceil(end / spacing));
  const samples = Float64Array.from({ length: known + 3 }, (_, k) => at((k * end) / known));
  return finer(samples, end / known, 12, highest);
}

/** Cubic between the samples; zero beyond the last but two. Transfers start with a slope: before zero the first parabola goes on. */
function finer(samples: Float64Array, spacing: number, times: number, highest: number): RadialOtf {
  const step = spacing / times;
  const known = samples.length - 3;
  const values = new Float32Array(Math.ceil(highest / step) + 3);
  for (let k = 0; k < known; k++) {
    const b = samples[k]!;
    const c = samples[k + 1]!;
    const d = samples[k + 2]!;
    const a = k > 0 ? samples[k - 1]! : 3 * b - 3 * c + d;
    for (let j = 0; j < times; j++) {
      const x = j / times;
      values[k * times + j] = b + 0.5 * x * (c - a + x * (2 * a - 5 * b + 4 * c - d + x * (3 * (b - c) + d - a)));
    }
  }
  values[known * times] = samples[known]!;
  return { step, values };
}
