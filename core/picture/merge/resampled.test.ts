import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { Picture } from '../picture.ts';
import { coveredBy, resampled } from './resampled.ts';

const picture = (columns: number, rows: number, light: (x: number, y: number) => number): Picture => ({
  ...{ columns, rows, channels: 1 },
  light: Float32Array.from({ length: columns * rows }, (_, at) =>
    light((at % columns) - (columns - 1) / 2, Math.floor(at / columns) - (rows - 1) / 2),
  ),
});
const most = (a: Picture, b: Picture, rim: number) => {
  let worst = 0;
  for (let y = rim; y < a.rows - rim; y++)
    for (let x = rim; x < a.columns - rim; x++)
      worst = Math.max(worst, Math.abs(a.light[y * a.columns + x]! - b.light[y * a.columns + x]!));
  return worst;
};

describe('a picture brought to another scale', () => {
  it('is the picture itself at scale 1, and comes back to itself through the splines', () => {
    const noise = picture(31, 22, (x, y) => Math.abs(Math.sin(x * 12.9898 + y * 78.233) * 43758.5453) % 1);
    expect(resampled(noise, 1)).toBe(noise);
    expect(most(resampled(noise, 1 + 1e-9), noise, 0)).toBeLessThan(1e-5);
  });

  it('shows a wave of six pixels where it belongs, to two thousandths, at even and odd sizes', () => {
    const wave = (x: number, y: number) => 0.5 + 0.25 * Math.cos((2 * Math.PI * x) / 6) + 0.25 * Math.sin(y / 2);
    for (const scale of [0.93, 1.04])
      for (const [columns, rows] of [
        [64, 41],
        [33, 50],
      ] as const)
        expect(
          most(
            resampled(picture(columns, rows, wave), scale),
            picture(columns, rows, (x, y) => wave(scale * x, scale * y)),
            4,
          ),
        ).toBeLessThan(0.002);
  });

  it('stays constant where it is constant, up to the rim and beyond it', () => {
    for (const scale of [0.5, 0.99, 1.3]) {
      const grey = resampled(
        picture(9, 4, () => 0.4),
        scale,
      );
      expect(
        most(
          grey,
          picture(9, 4, () => 0.4),
          0,
        ),
      ).toBeLessThan(1e-6);
    }
  });

  it('can be a single pixel or a line', () => {
    expect(
      resampled(
        picture(1, 1, () => 0.3),
        1.1,
      ).light[0],
    ).toBeCloseTo(0.3, 6);
    expect(
      resampled(
        picture(1, 7, () => 0.3),
        1.1,
      ).light[3],
    ).toBeCloseTo(0.3, 6);
  });

  it('has no scale of zero', () => {
    expect(() =>
      resampled(
        picture(2, 2, () => 0),
        0,
      ),
    ).toThrow(OutOfRange);
  });
});

describe('the places a frame covers', () => {
  it('are all of them where its details are smaller, and fewer at both rims where they are larger', () => {
    expect(coveredBy(100, 0.9)).toEqual({ first: 0, end: 100 });
    expect(coveredBy(100, 1)).toEqual({ first: 0, end: 100 });
    expect(coveredBy(101, 1.1)).toEqual({ first: 5, end: 96 });
    // By hand: 49.5 − 50 · 89/100 is 5, whatever rounding makes of it; and of a frame so large one pixel is left, or none.
    expect(coveredBy(100, 100 / 89)).toEqual({ first: 5, end: 95 });
    expect(coveredBy(9, 50)).toEqual({ first: 4, end: 5 });
    expect(coveredBy(10, 50)).toEqual({ first: 5, end: 5 });
  });
});
