import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { grain } from './value-noise.ts';

const size = 2;
const places = Array.from({ length: 400 }, (_, k) => [(k % 20) - 10, Math.floor(k / 20) - 10] as const);

describe('grain', () => {
  it('is the same for the same seed, and another for another', () => {
    const [one, same, other] = [grain(1, 0.01, 3), grain(1, 0.01, 3), grain(1, 0.01, 4)];
    expect(places.map(([x, y]) => one(x / 7, y / 7))).toEqual(places.map(([x, y]) => same(x / 7, y / 7)));
    expect(places.map(([x, y]) => one(x / 7, y / 7))).not.toEqual(places.map(([x, y]) => other(x / 7, y / 7)));
  });

  it('stays from −1 to 1, about a mean of nothing', () => {
    const fine = grain(1, 0.001, 8);
    const values = places.map(([x, y]) => fine(3.7 * x, 2.3 * y));
    expect(values.every((value) => value > -1 && value < 1)).toBe(true);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(mean).toEqual(closeTo(0, { absolute: 0.1, because: 'five standard deviations of 400 independent places' }));
    expect(Math.max(...values)).toBeGreaterThan(0.5);
    expect(Math.min(...values)).toBeLessThan(-0.5);
  });

  it('has nothing that is too fine for the grid', () => {
    expect(places.every(([x, y]) => grain(1, 1.01, 8)(x / 7, y / 7) === 0)).toBe(true);
    const [coarse, fine] = [grain(1, 0.25, 8), grain(1, 0.001, 8)];
    const steepest = (noise: typeof fine) =>
      Math.max(...places.map(([x, y]) => Math.abs(noise(x / 7 + 0.01, y / 7) - noise(x / 7, y / 7))));
    expect(steepest(fine)).toBeGreaterThan(steepest(coarse));
  });

  it('is smooth: no step where one cell ends and the next begins, either way', () => {
    const noise = grain(size, 0.5, 5);
    for (const [x, y] of places) {
      expect(noise(size * x - 1e-9, y + 0.3)).toBeCloseTo(noise(size * x + 1e-9, y + 0.3), 7);
      expect(noise(x + 0.3, size * y - 1e-9)).toBeCloseTo(noise(x + 0.3, size * y + 1e-9), 7);
    }
  });

  it('repeats only after 256 cells', () => {
    const noise = grain(size, 0.5, 5);
    expect(noise(0.3 + 256 * size, 0.4)).toBeCloseTo(noise(0.3, 0.4), 9);
    expect(noise(0.3, 0.4 - 256 * size)).toBeCloseTo(noise(0.3, 0.4), 9);
    const row = Array.from({ length: 256 }, (_, k) => noise(k * size, 0));
    const column = Array.from({ length: 256 }, (_, k) => noise(0, k * size));
    for (const line of [row, column])
      for (const shift of [1, 2, 16, 128]) {
        const alike = line.filter((value, k) => value === line[(k + shift) % 256]).length;
        expect(alike).toBeLessThan(16);
      }
  });
});
