import { describe, expect, it } from 'vitest';
import { extendHeights } from './extended-heights.ts';

/** A plane of three columns with what is covered, of height and place as given. */
function extended(rows: number, covered: Readonly<Record<number, number>>): number[] {
  const height = new Float32Array(3 * rows);
  const coverage = new Float32Array(3 * rows);
  for (const [at, value] of Object.entries(covered)) [height[Number(at)], coverage[Number(at)]] = [value, 1];
  extendHeights(height, coverage, 3, rows);
  return Array.from(height);
}

describe('extendHeights', () => {
  it('carries a height to the right and down, then to the left and up', () => {
    expect(extended(3, { 4: 7 })).toEqual([7, 7, 7, 7, 7, 7, 7, 7, 7]);
    expect(extended(3, { 0: 2 })).toEqual([2, 2, 2, 2, 2, 2, 2, 2, 2]);
    expect(extended(3, { 8: 5 })).toEqual([5, 5, 5, 5, 5, 5, 5, 5, 5]);
  });

  it('takes the mean where a neighbour before and one above both have one', () => {
    expect(extended(2, { 1: 2, 3: 4 })).toEqual([3, 2, 2, 4, 3, 2.5]);
  });

  it('leaves alone what is covered, and a plane where nothing is or everything', () => {
    expect(extended(2, {})).toEqual([0, 0, 0, 0, 0, 0]);
    expect(extended(1, { 0: 1, 1: 2, 2: 3 })).toEqual([1, 2, 3]);
    expect(extended(1, { 0: 1, 2: 3 })).toEqual([1, 1, 3]);
  });
});
