import { describe, expect, it } from 'vitest';
import { lifeSize } from '#tests/support/in-view.ts';
import { decimated, samplingGrid } from './sampling-grid.ts';

describe('samplingGrid', () => {
  it.each([1, 2, 3])('has pixels %d places apart, the axis in the middle, a rim around', (oversampling) => {
    const { grid, picture } = samplingGrid({ ...lifeSize, columns: 6, rows: 4, pitch: 0.12 }, oversampling, 5);
    expect(picture).toEqual({ left: 5, right: 5 + 5 * oversampling + 1, top: 5, bottom: 5 + 3 * oversampling + 1 });
    expect(grid.columns - picture.right).toBe(5);
    expect(grid.rows - picture.bottom).toBe(5);
    const place = (column: number) => grid.left + column * grid.spacing;
    expect(place(picture.left)).toBeCloseTo(-2.5 * 0.12, 12);
    expect(place(picture.left + oversampling)).toBeCloseTo(-1.5 * 0.12, 12);
    expect(place(picture.left) + place(picture.right - 1)).toBeCloseTo(0, 12);
  });
});

describe('decimated', () => {
  it('keeps the pixels', () => {
    const plane = Float32Array.from({ length: 35 }, (_, at) => at);
    expect(Array.from(decimated(plane, 7, 5, 2))).toEqual([0, 2, 4, 6, 14, 16, 18, 20, 28, 30, 32, 34]);
    expect(decimated(plane, 7, 5, 1)).toBe(plane);
  });
});
