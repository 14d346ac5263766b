import { describe, expect, it } from 'vitest';
import { bandLimit, painted, placesOf, ramp, stroke, within } from './canvas.ts';

describe('a stroke', () => {
  it('covers its width, however coarse the samples and wherever they fall', () => {
    for (const pitch of [0.01, 0.05, 0.3, 1.7]) {
      for (const shift of [0, 0.2, 0.5, 0.83]) {
        let covered = 0;
        for (let index = -300; index < 300; index++)
          covered += pitch * stroke(Math.abs((index + shift) * pitch), 0.04, pitch);
        expect(covered).toBeCloseTo(0.08, 9);
      }
    }
  });

  it('covers a sample wholly at most', () => {
    expect(stroke(0, 5, 0.1)).toBe(1);
    expect(stroke(5.2, 5, 0.1)).toBe(0);
  });
});

describe('what a canvas is made of', () => {
  it('has the middles of its samples around a place in the middle', () => {
    const { x, y } = placesOf({ columns: 4, rows: 3, pitch: 2, seed: 1, centre: { x: 10, y: -5 } });
    expect([...x]).toEqual([7, 9, 11, 13]);
    expect([...y]).toEqual([-7, -5, -3]);
    expect([...placesOf({ columns: 2, rows: 1, pitch: 2, seed: 1 }).x]).toEqual([-1, 1]);
  });

  it('is painted sample by sample, row by row, covered unless it says otherwise', () => {
    const surface = painted({ columns: 2, rows: 2, pitch: 2, seed: 1 }, (x, y, sample) => {
      [sample.red, sample.green, sample.blue, sample.height] = [x + 10, y + 10, x + y, 10 * y];
      if (x > 0 && y < 0) sample.coverage = 0.5;
    });
    expect([...surface.albedo]).toEqual([9, 11, 9, 11, 9, 9, 11, 11, -2, 0, 0, 2]);
    expect([...surface.height]).toEqual([-10, -10, 10, 10]);
    expect([...surface.coverage]).toEqual([1, 0.5, 1, 1]);
  });

  it('covers half of a sample on an outline, all of it half a sample inside', () => {
    expect([-1, -0.1, -0.05, 0, 0.05, 0.1, 1].map((off) => Number(within(off, 0.2).toFixed(9)))).toEqual([
      1, 1, 0.75, 0.5, 0.25, 0, 0,
    ]);
  });

  it('rises smoothly from one value to another, downwards too', () => {
    expect([0, 2, 2.5, 3, 3.5, 4, 9].map((value) => ramp(2, 4, value))).toEqual([0, 0, 0.15625, 0.5, 0.84375, 1, 1]);
    expect(ramp(4, 2, 2.5)).toBe(0.84375);
  });

  it('leaves out what has less than two samples a period, and nothing of what has four', () => {
    expect([1, 2, 3, 4, 9].map((period) => bandLimit(0.5 * period, 0.5))).toEqual([0, 0, 0.5, 1, 1]);
  });
});
