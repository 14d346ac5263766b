import { describe, expect, it } from 'vitest';
import { toDisplay, toneCurve } from './display.ts';

describe('the way to a screen', () => {
  it.each([
    [0, 0],
    [0.0031308, 10],
    [0.18, 118],
    [0.5, 188],
    [1, 255],
    [7, 255],
    [-1, 0],
  ])('shows light of %d as %d', (light, shown) => {
    expect(toneCurve(light)).toBe(shown);
    const pixels = toDisplay({ columns: 1, rows: 1, channels: 1, light: Float32Array.of(light) });
    expect(Array.from(pixels)).toEqual([shown, shown, shown, 255]);
  });

  it('keeps channels apart, and never shows what is not a number as anything but black', () => {
    const light = Float32Array.of(1, 0, 0, 1, 0.5, NaN);
    expect(Array.from(toDisplay({ columns: 2, rows: 1, channels: 3, light }))).toEqual([
      255, 0, 188, 255, 0, 255, 0, 255,
    ]);
  });
});
