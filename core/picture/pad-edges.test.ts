import { describe, expect, it } from 'vitest';
import { padEdges } from './pad-edges.ts';

const [columns, rows] = [10, 8];
const box = { left: 0, right: 6, top: 0, bottom: 5 };
const nowhere = { left: false, right: false, top: false, bottom: false };

function plane() {
  const re = new Float32Array(columns * rows);
  for (let row = 0; row < 5; row++) for (let column = 0; column < 6; column++) re[row * columns + column] = column + 1;
  return { columns, rows, re, im: new Float32Array(columns * rows) };
}

const rowOf = ({ re }: { re: Float32Array }, row: number) =>
  Array.from(re.subarray(row * columns, (row + 1) * columns));

describe('padEdges', () => {
  it('fills the period between two sides that both go on, half from each', () => {
    const pair = plane();
    expect(padEdges(pair, box, { left: true, right: true, top: true, bottom: true }, 1)).toEqual([0, rows]);
    for (let row = 0; row < rows; row++) expect(rowOf(pair, row)).toEqual([1, 2, 3, 4, 5, 6, 6, 6, 1, 1]);
  });

  it('leaves twice the radius empty where one side goes on and the other does not', () => {
    const pair = plane();
    expect(padEdges(pair, box, { ...nowhere, left: true }, 1)).toEqual([0, 5]);
    expect(rowOf(pair, 2)).toEqual([1, 2, 3, 4, 5, 6, 0, 0, 1, 1]);
    expect(rowOf(pair, 5)).toEqual(new Array(10).fill(0));
  });

  it('leaves alone what ends', () => {
    const pair = plane();
    expect(padEdges(pair, box, nowhere, 1)).toEqual([0, 5]);
    expect(pair).toEqual(plane());
  });
});
