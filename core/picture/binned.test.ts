import { describe, expect, it } from 'vitest';
import { smallScene } from '#tests/support/small-scenes.ts';
import { binnedScene } from './binned.ts';
import { extendHeights } from './extended-heights.ts';

describe('binnedScene', () => {
  const scene = smallScene(
    { columns: 8, rows: 6, pitch: 0.5 },
    { light: (x) => x, height: (_, y) => y + 3, coverage: (x) => (x < 0 ? 1 : 0.5) },
  );

  it('takes the mean of light times coverage, and of heights by their coverage', () => {
    const { columns, rows, pitch, left, top, surfaces } = binnedScene(scene, 2, 1);
    expect([columns, rows, pitch, left, top]).toEqual([4, 3, 1, -1.5, -1]);
    expect(Array.from(surfaces[0]!.light[0]!.subarray(0, 4), (value) => Number(value.toFixed(6)))).toEqual([
      -3, -1, 0.5, 1.5,
    ]);
    expect(Array.from(surfaces[0]!.coverage.subarray(0, 4))).toEqual([1, 1, 0.5, 0.5]);
    expect(surfaces[0]!.height[0]).toBe(1);
  });

  it('keeps three channels apart where they are wanted', () => {
    const [red, green, blue] = binnedScene(scene, 1, 3).surfaces[0]!.light;
    expect(red).toEqual(green);
    expect(blue).toEqual(green);
    expect(red![0]).toBe(-3.5);
  });
});

describe('extendHeights', () => {
  it('carries heights outwards and leaves what is covered as it is', () => {
    const coverage = new Float32Array(30).map((_, at) => (at === 14 || at === 15 ? 1 : 0));
    const height = new Float32Array(30).map((_, at) => (at === 14 ? 3 : at === 15 ? 5 : 0));
    extendHeights(height, coverage, 6, 5);
    expect(height[14]).toBe(3);
    expect(height[15]).toBe(5);
    for (const value of height) {
      expect(value).toBeGreaterThanOrEqual(3);
      expect(value).toBeLessThanOrEqual(5);
    }
  });
});
