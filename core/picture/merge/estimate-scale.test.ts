import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import type { Picture } from '../picture.ts';
import { estimateScale } from './estimate-scale.ts';

/** Waves in many directions, none shorter than five pixels, seen so many times larger about the middle. */
function waves(columns: number, rows: number, scale: number, channels: 1 | 3 = 1): Picture {
  const light = Float32Array.from({ length: columns * rows * channels }, (_, k) => {
    const at = k % (columns * rows);
    const [x, y] = [(at % columns) - (columns - 1) / 2, Math.floor(at / columns) - (rows - 1) / 2];
    let sum = 0.5;
    for (let wave = 1; wave <= 12; wave++) {
      const along = x * Math.cos(wave * 2.4) + y * Math.sin(wave * 2.4);
      sum += 0.04 * Math.cos(((2 * Math.PI) / (4 + wave)) * (along / scale) + wave);
    }
    return sum;
  });
  return { columns, rows, channels, light };
}

describe('the scale found by comparing two pictures', () => {
  it.each([0.9, 0.97, 0.9999, 1.002, 1.04, 1.12])('is %f where the one is so many times larger', (scale) => {
    for (const [columns, rows] of [
      [96, 64],
      [71, 95],
    ] as const)
      expect(estimateScale(waves(columns, rows, scale), waves(columns, rows, 1))).toEqual(
        closeTo(scale, {
          relative: 5e-4,
          because: 'levels are cut at the same pixels, not at the same details, for both',
        }),
      );
  });

  it('is 1 over the one found the other way round', () => {
    const [a, b] = [waves(80, 60, 1), waves(80, 60, 1.03)];
    expect(estimateScale(a, b) * estimateScale(b, a)).toEqual(
      closeTo(1, { absolute: 3e-4, because: 'each is as near as the splines of the picture that is scaled' }),
    );
  });

  it('is that of all channels together', () => {
    expect(estimateScale(waves(80, 60, 1.03, 3), waves(80, 60, 1, 3))).toBeCloseTo(
      estimateScale(waves(80, 60, 1.03), waves(80, 60, 1)),
      6,
    );
  });

  it('is 1 of a picture with itself, and where there is nothing to compare', () => {
    const grey = { ...waves(33, 20, 1), light: new Float32Array(660).fill(0.4) };
    expect(estimateScale(waves(33, 20, 1), waves(33, 20, 1))).toBe(1);
    expect(estimateScale(grey, grey)).toBe(1);
    expect(estimateScale(grey, waves(33, 20, 1))).toBeGreaterThan(0.5);
    expect(estimateScale(waves(1, 1, 1), waves(1, 1, 2))).toBe(1);
  });

  it('is refused for pictures of different shapes', () => {
    expect(() => estimateScale(waves(33, 20, 1), waves(33, 21, 1))).toThrow('does not go with');
  });
});
