import { circleOfConfusionByPixels } from '#core/depth/circle-of-confusion-by-pixels.formula.ts';
import { pixelsPerMillimetre } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { cutoffFrequency } from '#core/wave/cutoff-frequency.formula.ts';
import { nyquistFrequency } from '#core/wave/nyquist-frequency.formula.ts';
import { spatialFrequencyOfCircle } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const inch = 25.4;

const nyquist = (sensor: { pixelPitch: number }) => ({ nyquistFrequency: nyquistFrequency(sensor) });

export const ours = oursById({
  'nyquist-2.2': nyquist,
  'pixel-for-213': nyquist,
  'cutoff-f8': (light: { wavelength: number; effectiveFNumber: number }) => ({
    cutoffFrequency: cutoffFrequency(light),
  }),
  'usaf-1951': (line: { circleOfConfusion: number }) => ({ spatialFrequency: spatialFrequencyOfCircle(line) }),
  'graticule-lines': ({ lineWidths }: { lineWidths: readonly number[] }) => ({
    spatialFrequencies: lineWidths.map((circleOfConfusion) => spatialFrequencyOfCircle({ circleOfConfusion })),
  }),
  'two-pixels': ({ mosaicPitch }: { mosaicPitch: number }) => ({
    circleOfConfusion: circleOfConfusionByPixels({ pixelPitch: mosaicPitch }),
  }),
  'pixels-per-millimetre': ({ perInch }: { perInch: readonly number[] }) => ({
    pixelsPerMillimetre: perInch.map((pixels) => pixelsPerMillimetre({ magnification: 1, pixelPitch: inch / pixels })),
  }),
});
