import { describe, expect, it } from 'vitest';
import { addExpanded, levelSizes, reduceLevel } from './pyramid.ts';

const noise = (length: number) =>
  Float32Array.from({ length }, (_, k) => Math.abs(Math.sin(k * 12.9898) * 43758.5453) % 1);

function upAndDown(plane: Float32Array, columns: number, rows: number) {
  const half = new Float32Array(((columns + 1) >> 1) * ((rows + 1) >> 1));
  const spare = new Float32Array(columns * rows);
  reduceLevel(plane, { columns, rows }, half, spare);
  return { half, spare };
}

describe('the levels of a pyramid', () => {
  it('are each half as large, rounded up, down to four pixels', () => {
    expect(levelSizes(33, 18)).toEqual([
      { columns: 33, rows: 18 },
      { columns: 17, rows: 9 },
      { columns: 9, rows: 5 },
    ]);
    expect(levelSizes(1, 1)).toHaveLength(1);
  });
});

describe('a level made half as large', () => {
  it.each([
    [12, 8],
    [13, 7],
    [5, 4],
    [1, 2],
  ])('stays constant where it is constant, %i × %i', (columns, rows) => {
    const { half, spare } = upAndDown(new Float32Array(columns * rows).fill(0.4), columns, rows);
    for (const value of half) expect(value).toBeCloseTo(0.4, 6);
    const rest = new Float32Array(columns * rows).fill(0.4);
    addExpanded(rest, { columns, rows }, half, spare, -1);
    for (const value of rest) expect(value).toBeCloseTo(0, 6);
  });

  it('holds a point in one part of 16 of its row and 6 of its own column', () => {
    const plane = new Float32Array(9 * 9);
    plane[4 * 9 + 4] = 256;
    const { half } = upAndDown(plane, 9, 9);
    expect(Array.from(half.subarray(5, 20))).toEqual([0, 1, 6, 1, 0, 0, 6, 36, 6, 0, 0, 1, 6, 1, 0]);
  });

  it('keeps a slope in the middle, brought back to its size', () => {
    const slope = Float32Array.from({ length: 33 * 8 }, (_, at) => at % 33);
    const { half, spare } = upAndDown(slope, 33, 8);
    const back = new Float32Array(33 * 8);
    addExpanded(back, { columns: 33, rows: 8 }, half, spare, 1);
    for (let x = 5; x < 28; x++) expect(back[4 * 33 + x]).toBeCloseTo(x, 5);
  });

  it('leaves what it lacks in the details: together they are the plane again', () => {
    const plane = noise(15 * 11);
    const rest = plane.slice();
    const { half, spare } = upAndDown(plane, 15, 11);
    addExpanded(rest, { columns: 15, rows: 11 }, half, spare, -1);
    addExpanded(rest, { columns: 15, rows: 11 }, half, spare, 1);
    rest.forEach((value, at) => expect(value).toBeCloseTo(plane[at]!, 5));
  });
});
