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

describe('any box with any sides', () => {
  const inner = { left: 2, right: 6, top: 1, bottom: 5 };
  const radius = 2;
  const [wide, high] = [15, 13];

  /** Which place of a line a place takes its value from: its own in the box, an outermost one where it is padded, none elsewhere. */
  function sourceOf(place: number, start: number, end: number, length: number, before: boolean, after: boolean) {
    if (place >= start && place < end) return place;
    const room = length - (end - start);
    const beyond = (place - end + length) % length;
    if (before && after) return beyond < Math.ceil(room / 2) ? end - 1 : start;
    const padded = room - 2 * radius;
    if (after && beyond < padded) return end - 1;
    return before && beyond >= room - padded ? start : undefined;
  }

  it.each(
    Array.from({ length: 16 }, (_, k) => ({
      left: (k & 1) > 0,
      right: (k & 2) > 0,
      top: (k & 4) > 0,
      bottom: (k & 8) > 0,
    })),
  )('is padded on these only, in both planes: %o', (sides) => {
    // What is padded before the first place goes round the period: the box stands where nothing runs over the end of a line.
    const box = { left: sides.left ? 0 : inner.left, right: 6, top: sides.top ? 0 : inner.top, bottom: 5 };
    const filled = (sign: number) =>
      Float32Array.from({ length: wide * high }, (_, at) => {
        const [row, column] = [Math.floor(at / wide), at % wide];
        const isIn = row >= box.top && row < box.bottom && column >= box.left && column < box.right;
        return isIn ? sign * (at + 1) : 0;
      });
    const pair = { columns: wide, rows: high, re: filled(1), im: filled(-1) };
    const before = pair.re.slice();
    const [first, end] = padEdges(pair, box, sides, radius);
    for (let row = 0; row < high; row++) {
      const fromRow = sourceOf(row, box.top, box.bottom, high, sides.top, sides.bottom);
      for (let column = 0; column < wide; column++) {
        const fromColumn = sourceOf(column, box.left, box.right, wide, sides.left, sides.right);
        const value = fromRow === undefined || fromColumn === undefined ? 0 : before[fromRow * wide + fromColumn]!;
        expect(pair.re[row * wide + column]).toBe(value);
        expect(pair.im[row * wide + column]! + value).toBe(0);
        if (value !== 0) expect(row >= first && row < end).toBe(true);
      }
    }
    const below = sides.bottom ? high - (box.bottom - box.top) - 2 * radius : 0;
    expect([first, end]).toEqual(sides.top ? [0, high] : [box.top, box.bottom + below]);
  });
});
