import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { placesOf, slicesOf } from './slices.ts';
import { blurAt } from './view.ts';

const view = { ...lifeSize, focusHeight: 4 };

/** Of three sharp planes. */
const nearest = (height: number) => (height > 6.5 ? 8 : height > 3 ? 5 : 1);

describe('slicesOf', () => {
  it('has the nearest and the deepest place among its slices, and the sharp plane between them', () => {
    const { blurs } = slicesOf(view, 0, 10, 24);
    expect(blurs).toHaveLength(24);
    expect(blurs[0]).toBe(blurAt(view, 10));
    expect(blurs.at(-1)).toBe(blurAt(view, 0));
    expect(blurs.filter((blur) => Math.abs(blur) < 1e-12)).toHaveLength(1);
    expect([...blurs].sort((a, b) => a - b)).toEqual(blurs);
  });

  it('gives each place the blur of the sharp plane nearest to it, where there are several', () => {
    const slices = slicesOf(view, 0, 10, 24, [8, 1, 5]);
    const widest = Math.max(
      ...[10, 6.5, 3, 0].map((height) => Math.abs(blurAt({ ...view, focusHeight: nearest(height) }, height))),
    );
    expect(Math.max(...slices.blurs.map(Math.abs))).toBeCloseTo(widest, 3);
    for (const height of [0, 1, 2.9, 3.1, 5, 6.4, 6.6, 8, 10]) {
      const place = placesOf(slices, Float32Array.of(height))[0]!;
      const below = Math.min(Math.trunc(place), slices.blurs.length - 2);
      const mean = slices.blurs[below]! + (place - below) * (slices.blurs[below + 1]! - slices.blurs[below]!);
      expect(mean).toBeCloseTo(blurAt({ ...view, focusHeight: nearest(height) }, height), 2);
    }
    expect(slicesOf(view, 0, 10, 24, [4])).toEqual(slicesOf(view, 0, 10, 24));
  });

  it('shares a place out so that the mean of b² is that of its own blur', () => {
    const slices = slicesOf(view, 0, 10, 12);
    for (let height = 0.05; height < 10; height += 0.31) {
      const place = placesOf(slices, Float32Array.of(height))[0]!;
      const below = Math.min(Math.trunc(place), 10);
      const share = place - below;
      const mean = (1 - share) * slices.blurs[below]! ** 2 + share * slices.blurs[below + 1]! ** 2;
      const own = blurAt(view, height) ** 2;
      const because = 'read from a table of 4096 heights';
      expect(mean).toEqual(closeTo(own, { absolute: 2e-3 * slices.blurs[below]! ** 2 + 2e-7, because }));
    }
  });

  it('lies closer where blurs are small: steps hidden by the pixel near the sharp plane, at constant ratio far from it', () => {
    const { blurs } = slicesOf(view, 0, 10, 24);
    const sharp = blurs.findIndex((blur) => Math.abs(blur) < 1e-12);
    expect(blurs[sharp + 1]! - blurs[sharp]!).toBeLessThan(0.02);
    const ratio = (k: number) => blurs[k]! / blurs[k + 1]!;
    expect(ratio(0)).toEqual(closeTo(ratio(1), { relative: 0.05, because: 'sinh is nearly an exponential there' }));
  });

  it('takes steps by what a pixel and diffraction hide together', () => {
    for (const [pitch, effectiveFNumber] of [
      [0.03, 8],
      [0.002, 64],
    ] as const) {
      // The pixel, and twice λN: 8.9 and 71 µm.
      const hidden = Math.hypot(pitch, 2 * 0.000555 * effectiveFNumber);
      const { blurs } = slicesOf({ ...view, pitch, effectiveFNumber }, 0, 10, 24);
      const places = blurs.map((blur) => Math.asinh(blur / hidden));
      const steps = places.slice(1).map((place, k) => place - places[k]!);
      const sharp = blurs.findIndex((blur) => Math.abs(blur) < 1e-12);
      for (const side of [steps.slice(0, sharp), steps.slice(sharp)])
        for (const step of side) expect(step).toEqual(closeTo(side[0]!, { relative: 1e-9, because: 'rounding' }));
    }
  });

  it('is one slice for what is flat, and few where depth hardly shows', () => {
    expect(slicesOf(view, 2, 2, 24).blurs).toHaveLength(1);
    expect(slicesOf(view, 2, 2, 24).blurs[0]).toEqual(
      closeTo(blurAt(view, 2), { relative: 1e-12, because: 'asinh and back' }),
    );
    expect(slicesOf(view, 2, 2.01, 24).blurs.length).toBeLessThan(5);
    expect(slicesOf(view, 0, 10, 2).blurs).toEqual([blurAt(view, 10), blurAt(view, 0)]);
  });
});
