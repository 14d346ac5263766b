import { describe, expect, it } from 'vitest';
import { errorMap } from './error-map.ts';
import type { Picture } from './picture.ts';
import { psnr } from './psnr.ts';

const grey = (light: number, columns = 5): Picture => ({
  ...{ columns, rows: 3, channels: 3 },
  light: new Float32Array(9 * columns).fill(light),
});

describe('the likeness of two pictures', () => {
  it('is 20 dB where they differ by a tenth of white, and 20 more for a tenth of that', () => {
    expect(psnr(grey(0.5), grey(0.6))).toBeCloseTo(20, 4);
    expect(psnr(grey(0.5), grey(0.51))).toBeCloseTo(40, 4);
  });

  it('is the same both ways, and endless for equal pictures', () => {
    expect(psnr(grey(0.2), grey(0.5))).toBe(psnr(grey(0.5), grey(0.2)));
    expect(psnr(grey(0.2), grey(0.2))).toBe(Infinity);
  });

  it('is refused for pictures of different shapes', () => {
    expect(() => psnr(grey(0.5), grey(0.5, 4))).toThrow('4 × 3 pixels');
    expect(() => psnr(grey(0.5), { ...grey(0.5), light: new Float32Array(3) })).toThrow('3 values');
  });
});

describe('the map of differences', () => {
  it('is black where pictures agree, and as bright as the channels differ in the mean square elsewhere', () => {
    const other = grey(0.5);
    other.light[7] = 0.8;
    const { channels, light } = errorMap(grey(0.5), other);
    expect(channels).toBe(1);
    expect(light[7]).toBeCloseTo(0.3 / Math.sqrt(3), 6);
    expect(light.filter((value) => value > 0)).toHaveLength(1);
  });

  it('holds the mean square of which the likeness is made', () => {
    const other = grey(0.5);
    other.light.forEach((_, at) => (other.light[at] = at / 50));
    const { light } = errorMap(grey(0.5), other);
    const mean = light.reduce((sum, value) => sum + value * value, 0) / light.length;
    expect(-10 * Math.log10(mean)).toBeCloseTo(psnr(grey(0.5), other), 4);
  });
});
