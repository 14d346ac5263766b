import { describe, expect, it } from 'vitest';
import { renderPicture } from '#core/picture/render.ts';
import { blurAt, type View } from '#core/picture/view.ts';
import { photopicProfile } from '#core/wave/photopic-spread.ts';
import { pointSpreadProfile } from '#core/wave/point-spread.ts';
import { betweenSamples } from '#tests/support/between-samples.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize, pitchOnPixels } from '#tests/support/in-view.ts';
import { point, smallScene } from '#tests/support/small-scenes.ts';

const height = 10;
const counted = 0.000555;

/** Offsets of the sharp plane in mm: blurs of 0, 9, 22, 46, 91, −97 and 149 pixels, up to more than four wavelengths. */
const offsets = [0, 0.3, 0.7, 1.5, 3, -3, 5];

const lights: readonly Partial<View>[] = [
  { wavelength: 0.00055 },
  {},
  { wavelength: 0.00055, sphericalAberration: 1.5 },
  { sphericalAberration: -0.8, effectiveFNumber: 11 },
];

/** The image of a point by `core/wave` along a radius of the sensor: intensities relative to a perfect image's middle. */
function pattern(view: View, samples: number, imageRadius: number) {
  const { effectiveFNumber, wavelength = counted, sphericalAberration = 0 } = view;
  const blur = blurAt(view, height);
  const pupil = { defocusAberration: blur / (8 * wavelength * effectiveFNumber), sphericalAberration };
  const given = { ...pupil, effectiveFNumber, imageRadius };
  return (view.wavelength ? pointSpreadProfile({ ...given, wavelength }, samples) : photopicProfile(given, samples))
    .intensities;
}

/** What pixels along a row make of a pattern, each the mean over 8 × 8 places of its square. */
function inPixels(intensities: readonly number[], reach: number, pitch: number, count: number): number[] {
  const places = Array.from({ length: 8 }, (_, k) => (k + 0.5) / 8 - 0.5);
  return Array.from({ length: count }, (_, pixel) => {
    let sum = 0;
    for (const x of places)
      for (const y of places)
        sum += betweenSamples(intensities, (Math.hypot(pixel + x, y) * pitch * (intensities.length - 1)) / reach);
    return sum / 64;
  });
}

describe.each(lights)('a point in light and optics %o', (light) => {
  it.each(offsets)('is the point spread, to a thousandth of its peak, %d mm before the sharp plane', (offset) => {
    const view = { ...lifeSize, ...light, focusHeight: height + offset };
    const scene = smallScene({ columns: 257, rows: 257, pitch: pitchOnPixels(view, height) }, { light: point, height });
    const row = Array.from(renderPicture(scene, view).light.subarray(128 * 257 + 128, 128 * 257 + 128 + 60));
    const reach = 64 * view.pitch;
    const wave = inPixels(pattern(view, 4001, reach), reach, view.pitch, 60);
    const brightest = Math.max(...wave);
    // A perfect image holds its light in 4 (λ N_w)²/π of its peak; white light's is the mean of such patterns.
    const perfect = view.wavelength && (Math.PI / 4) * (view.pitch / (view.wavelength * view.effectiveFNumber)) ** 2;
    const unit = perfect ?? Math.max(...row) / brightest;
    row.forEach((value, pixel) => {
      expect(value / unit / brightest, `pixel ${pixel}`).toEqual(
        closeTo(wave[pixel]! / brightest, { absolute: 1e-3, because: 'a thousandth of the peak is what is promised' }),
      );
    });
  });
});
