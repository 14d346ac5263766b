import { describe, expect, it } from 'vitest';
import { lanesFor, scratchFor } from './scratch.ts';
import { gatherColumns, scatterColumns, transpose, transposeBack } from './transpose.ts';

const [columns, rows] = [7, 11];
const numbered = () => Float32Array.from({ length: columns * rows }, (_, at) => at + 1);

describe.each([
  [0, 11],
  [2, 4],
  [3, 5],
  [4, 6],
  [6, 3],
  [10, 1],
])('rows from %d on, %d of them,', (first, count) => {
  const lanes = lanesFor(count);

  it('stand side by side as columns', () => {
    const to = new Float32Array(columns * lanes);
    transpose(numbered(), to, columns, first, count);
    for (let column = 0; column < columns; column++)
      for (let row = 0; row < count; row++) expect(to[column * lanes + row]).toBe((first + row) * columns + column + 1);
  });

  it('come back where they were, and no other row is touched', () => {
    const to = new Float32Array(columns * lanes);
    transpose(numbered(), to, columns, first, count);
    const plane = new Float32Array(columns * rows);
    transposeBack(to, plane, columns, first, count);
    const expected = numbered().map((value, at) => {
      const row = Math.floor(at / columns);
      return row >= first && row < first + count ? value : 0;
    });
    expect(plane).toEqual(expected);
  });
});

describe('columns of both planes', () => {
  it.each([
    [0, 7],
    [2, 4],
    [5, 2],
  ])('from %d on, %d of them, are copied there, and back in the rows that are wanted', (first, count) => {
    const lanes = lanesFor(count);
    const pair = { columns, rows, re: numbered(), im: numbered().map((value) => -value) };
    const scratch = scratchFor(rows, lanes);
    gatherColumns(pair, scratch, first, count);
    for (let row = 0; row < rows; row++)
      for (let k = 0; k < lanes; k++) {
        const value = k < count ? row * columns + first + k + 1 : 0;
        expect(scratch.re[row * lanes + k]).toBe(value);
        expect(scratch.im[row * lanes + k]! + value).toBe(0);
      }
    const empty = { columns, rows, re: new Float32Array(columns * rows), im: new Float32Array(columns * rows) };
    scatterColumns(empty, scratch, first, count, [3, 9]);
    const expected = numbered().map((value, at) => {
      const [row, column] = [Math.floor(at / columns), at % columns];
      return row >= 3 && row < 9 && column >= first && column < first + count ? value : 0;
    });
    expect(empty.re).toEqual(expected);
    expect(empty.im.map((value) => -value || 0)).toEqual(expected);
  });
});
