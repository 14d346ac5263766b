import { describe, expect, it } from 'vitest';
import { erf } from '#core/exposure/erf.ts';
import { renderPicture } from '#core/picture/render.ts';
import { blurAt, type View } from '#core/picture/view.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { photopicTransfer } from '#core/wave/photopic-transfer.ts';
import { pixelTransfer } from '#core/wave/pixel-transfer.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize, pitchOnPixels } from '#tests/support/in-view.ts';
import { slantedEdgeContrast } from '#tests/support/slanted-edge.ts';
import { smallScene } from '#tests/support/small-scenes.ts';

const height = 10;
/** Five degrees. */
const lean = Math.tan(Math.PI / 36);

/** An edge that rises as the bell curve's integral does, σ in samples: soft enough to be sampled, and its own contrast is known. */
const sigma = 0.7;
const edge = (x: number, y: number) => 0.5 + 0.4 * erf((x - lean * y) / Math.hypot(1, lean) / (sigma * Math.SQRT2));
const ofEdge = (cyclesPerSample: number) => Math.exp(-2 * (Math.PI * sigma * cyclesPerSample) ** 2);

/** Contrast by `core/wave` at a frequency across the edge, which leans against the pixels' sides. */
function byWaves(view: View, frequency: number): number {
  const { effectiveFNumber, wavelength, pitch } = view;
  const blur = blurAt(view, height);
  const pupil = { defocusAberration: blur / (8 * (wavelength ?? 0.000555) * effectiveFNumber), sphericalAberration: 0 };
  const optics = wavelength
    ? opticalTransfer({ ...pupil, spatialFrequency: frequency, cutoffFrequency: 1 / (wavelength * effectiveFNumber) })
    : photopicTransfer({ ...pupil, spatialFrequency: frequency, effectiveFNumber });
  const [along, across] = [frequency / Math.hypot(1, lean), (frequency * lean) / Math.hypot(1, lean)];
  const pixels = [along, across].map((part) => pixelTransfer({ spatialFrequency: part, pixelPitch: pitch }));
  return Math.abs(optics * pixels[0]! * pixels[1]!);
}

const small: View = { ...lifeSize, columns: 161, rows: 320 };
const cases = [
  { what: 'finely sampled', view: { ...small, wavelength: 0.00055, pitch: 0.003 }, oversampling: 1 },
  { what: 'finely sampled, in white light', view: { ...small, pitch: 0.003 }, oversampling: 1 },
  {
    what: 'in pixels too large for the optics',
    view: { ...small, wavelength: 0.00055, effectiveFNumber: 8, pitch: 0.006 },
    oversampling: 4,
  },
] as const;

describe.each(cases)('an edge $what', ({ view: sharp, oversampling }) => {
  it.each([0, 0.15, 0.4, 0.8])('gives back the transfer over the passband, %d mm out of focus', (offset) => {
    const view = { ...sharp, focusHeight: height + offset };
    const pitch = pitchOnPixels(view, height) / oversampling;
    const scene = smallScene(
      { columns: (oversampling + 1) * 161, rows: (oversampling + 1) * 320, pitch },
      { light: edge, height },
    );
    const picture = renderPicture(scene, view, { oversampling });
    const cutoff = 1 / ((view.wavelength ?? 0.00042) * view.effectiveFNumber);
    // As far as the edge itself has contrast.
    const shares = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.98];
    const frequencies = shares
      .map((share) => share * cutoff)
      .filter((nu) => ofEdge((nu * view.pitch) / oversampling) > 0.25);
    expect(frequencies.length).toBeGreaterThan(8);
    const measured = slantedEdgeContrast(
      picture,
      56,
      frequencies.map((frequency) => frequency * view.pitch),
    );
    frequencies.forEach((frequency, k) => {
      const found = measured[k]! / ofEdge((frequency * view.pitch) / oversampling);
      expect(found, `${frequency} line pairs per millimetre`).toEqual(
        closeTo(byWaves(view, frequency), { absolute: 0.02, because: 'two hundredths are what is promised' }),
      );
    });
  });
});
