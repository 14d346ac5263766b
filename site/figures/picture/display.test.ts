import { describe, expect, test } from 'vitest';
import { areasOf, fileName, fitted, likenessInWords, enlargement, mostDifferent, stripesOf } from './display.ts';

const shape = { columns: 768, rows: 512 };

describe('where pictures go', () => {
  test('one keeps its shape in the middle of its place', () => {
    expect(fitted(768, 512, { x: 0, y: 0, width: 600, height: 600 })).toEqual({
      x: 0,
      y: 100,
      width: 600,
      height: 400,
    });
  });

  test('two stand beside each other where the place is wide, one above the other where it is high', () => {
    const wide = areasOf(shape, 900, 300, true);
    expect(wide.right!.x).toBeGreaterThan(wide.left.x + wide.left.width);
    const high = areasOf(shape, 390, 600, true);
    expect(high.right!.y).toBeGreaterThan(high.left.y + high.left.height);
    expect(high.right!.width).toBe(high.left.width);
  });

  test('a single picture has no second area', () => {
    expect(areasOf(shape, 600, 400, false)).not.toHaveProperty('right');
  });
});

describe('a file name', () => {
  test('carries the settings in letters that every system takes', () => {
    expect(fileName(['Slanted scale', '1×', 'f/5.6', '0.15 mm, 12 frames'])).toBe(
      'slanted-scale_1x_f5.6_0.15-mm-12-frames.png',
    );
  });

  test('leaves out what is empty', () => {
    expect(fileName(['Stamp', '', 'f/8'])).toBe('stamp_f8.png');
  });
});

test('likeness is told in words where a number would not be one', () => {
  const picture = { columns: 1, rows: 1, rgba: new Uint8ClampedArray(4) };
  expect(likenessInWords({ picture, likeness: Infinity })).toBe('identical to the perfectly sharp picture');
  expect(likenessInWords({ picture, likeness: 31.24 })).toBe(
    'differs from the perfectly sharp picture by typically 2.7\u202f% of white (31.2 dB)',
  );
  expect(likenessInWords({ picture })).toBe('');
});

describe('the part that differs most', () => {
  const dark = (columns: number, rows: number) => ({ columns, rows, rgba: new Uint8ClampedArray(4 * columns * rows) });

  test('holds the pixel in which alone two pictures differ, is as much smaller as it is enlarged, and lies within', () => {
    for (const [x, y] of [
      [5, 4],
      [47, 31],
      [30, 0],
      [0, 31],
    ] as const) {
      const difference = dark(48, 32);
      difference.rgba[4 * (y * 48 + x)] = 200;
      const part = mostDifferent(difference);
      expect(part).toMatchObject({ width: Math.ceil(48 / enlargement), height: Math.ceil(32 / enlargement) });
      expect(x >= part.x && x < part.x + part.width && y >= part.y && y < part.y + part.height).toBe(true);
      expect(part.x >= 0 && part.y >= 0 && part.x + part.width <= 48 && part.y + part.height <= 32).toBe(true);
    }
  });
});

describe('the stripes in which two pictures differ', () => {
  /** A difference as light as *light* says, by the share of the height from the top. */
  const differing = (light: (down: number) => number, [columns, rows] = [40, 200]) => ({
    columns,
    rows,
    rgba: Uint8ClampedArray.from({ length: 4 * columns * rows }, (_, at) =>
      at % 4 === 3 ? 255 : light((Math.floor(at / 4 / columns) + 0.5) / rows),
    ),
  });

  test('are where it is light all across, each as wide as it is half as light as at most', () => {
    const stripes = stripesOf(differing((down) => 60 * Math.sin(3 * Math.PI * down) ** 2));
    expect(stripes).toHaveLength(3);
    for (const [index, { from, to }] of stripes.entries()) {
      expect((from + to) / 2).toBeCloseTo((index + 0.5) / 3, 2);
      expect(to - from).toBeCloseTo(1 / 6, 1);
    }
  });

  test('are none where pictures are alike, differ alike everywhere, or differ in a row or two', () => {
    for (const light of [() => 0, () => 80, (down: number) => 70 + 10 * down, (down: number) => (down > 0.99 ? 90 : 2)])
      expect(stripesOf(differing(light))).toEqual([]);
  });
});
