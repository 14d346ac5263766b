import { describe, expect, it } from 'vitest';
import { renderPicture } from '#core/picture/render.ts';
import { sharpPicture } from '#core/picture/sharp-picture.ts';
import { blurAt, scaleAt, type View } from '#core/picture/view.ts';
import { energyProfile } from '#core/wave/energy-profile.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize, pitchOnPixels } from '#tests/support/in-view.ts';
import { point, smallScene } from '#tests/support/small-scenes.ts';

const view: View = { ...lifeSize, wavelength: 0.00055 };
const sum = (light: Float32Array) => light.reduce((total, value) => total + value, 0);
const height = 10;

describe('the light of a point', () => {
  it.each([0, 0.4, -1.2, 3])('is all there but what waves carry out of the picture, %d mm out of focus', (offset) => {
    const blurred = { ...view, focusHeight: height + offset };
    const scene = smallScene({ columns: 257, rows: 257, pitch: pitchOnPixels(view, height) }, { light: point, height });
    const scaled = { ...scene, pitch: pitchOnPixels(blurred, height) };
    const { light } = renderPicture(scaled, blurred);
    const inside = energyProfile(
      {
        imageRadius: 128.5 * view.pitch,
        defocusAberration: Math.abs(blurAt(blurred, height)) / (8 * 0.00055 * 16),
        sphericalAberration: 0,
        wavelength: 0.00055,
        effectiveFNumber: 16,
      },
      2,
    ).shares[1]!;
    expect(sum(light)).toBeLessThan(1.0001);
    expect(sum(light)).toBeGreaterThan(inside - 1e-4);
  });

  it('is the same however it moves during the exposure, spread along the movement', () => {
    const scene = smallScene({ columns: 257, rows: 257, pitch: pitchOnPixels(view, height) }, { light: point, height });
    const still = renderPicture(scene, view);
    const moved = renderPicture(scene, { ...view, motionBlur: { width: 0.06, angle: Math.PI / 2 } });
    expect(sum(moved.light)).toEqual(closeTo(sum(still.light), { absolute: 2e-3, because: 'the tails move out' }));
    // 30 pixels downwards: a pixel in the middle has a thirtieth of what its column had.
    const column = Array.from({ length: 257 }, (_, row) => still.light[row * 257 + 128]!);
    const thirtieth = column.reduce((total, value) => total + value, 0) / 30;
    expect(moved.light[128 * 257 + 128]).toEqual(
      closeTo(thirtieth, { relative: 0.02, because: 'the tails reach farther' }),
    );
    expect(moved.light[128 * 257 + 128 + 20]).toBeLessThan(thirtieth / 100);
  });
});

describe('perspective', () => {
  it.each([0, 4, 12])('puts a mark where the middle of the pupil sees it, %d mm above the deepest place', (at) => {
    const spot = (x: number, y: number) => Math.exp(-((x - 60) ** 2 + (y + 40) ** 2) / 18);
    const scene = smallScene({ columns: 301, rows: 301, pitch: 0.01 }, { light: spot, height: at });
    const tall = { ...scene, depth: 12 };
    const seen = { ...view, columns: 257, rows: 257, pitch: 0.01, focusHeight: 2, entrancePupilDistance: 50 };
    for (const picture of [sharpPicture(tall, seen), renderPicture(tall, seen)]) {
      const total = sum(picture.light);
      const mean = (of: (k: number) => number) =>
        picture.light.reduce((moment, value, k) => moment + value * (of(k) - 128), 0) / total;
      const scale = scaleAt(seen, at);
      const because = 'the spot is sampled, and a wide blur loses its tails to one side';
      expect(mean((k) => k % 257)).toEqual(closeTo(60 * scale, { absolute: 0.5, because }));
      expect(mean((k) => Math.floor(k / 257))).toEqual(closeTo(-40 * scale, { absolute: 0.5, because }));
    }
  });
});
