import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { convolve, throughSpectrum } from './convolve.ts';
import type { Pair } from './pair.ts';

const [columns, rows] = [40, 45];
const plane = () => new Float32Array(columns * rows);
const all = { filled: [0, rows], wanted: [0, rows] } as const;
const half = [columns >> 1, rows >> 1].map((count) => count + 1) as [number, number];
/** Less the higher the frequency, at another rate along the columns than along the rows. */
const filter = {
  columns,
  rows,
  quarter: Float32Array.from(
    { length: half[0] * half[1] },
    (_, at) => Math.exp(-(at % half[0]) / 9 - Math.floor(at / half[0]) / 5) / (columns * rows),
  ),
};

/** What the same filter makes of one point at the first place. */
function ofPoint(): Float32Array {
  const pair: Pair = { columns, rows, re: plane(), im: plane() };
  pair.re[0] = 1;
  convolve(pair, filter, all);
  return pair.re;
}

describe('convolve', () => {
  it('lays the image of a point over every place of both planes, periodically, and mixes nothing', () => {
    const pair: Pair = {
      columns,
      rows,
      re: plane().map((_, at) => Math.sin(at * at)),
      im: plane().map((_, at) => Math.cos(at * at)),
    };
    const before = { re: pair.re.slice(), im: pair.im.slice() };
    const spread = ofPoint();
    convolve(pair, filter, all);
    for (const [x, y] of [
      [0, 0],
      [17, 3],
      [39, 44],
      [20, 22],
    ] as const) {
      const sums = { re: 0, im: 0 };
      for (let from = 0; from < columns * rows; from++) {
        const share =
          spread[
            ((y - Math.floor(from / columns) + rows) % rows) * columns + ((x - (from % columns) + columns) % columns)
          ]!;
        sums.re += share * before.re[from]!;
        sums.im += share * before.im[from]!;
      }
      const single = { absolute: 2e-6, because: 'single precision' };
      expect(pair.re[y * columns + x]).toEqual(closeTo(sums.re, single));
      expect(pair.im[y * columns + x]).toEqual(closeTo(sums.im, single));
    }
  });

  it('needs no look at rows that are empty, nor at those that nobody wants', () => {
    const make = () => {
      const pair: Pair = { columns, rows, re: plane(), im: plane() };
      for (let at = 10 * columns; at < 20 * columns; at++) pair.re[at] = Math.sin(at);
      return pair;
    };
    const [whole, part] = [make(), make()];
    convolve(whole, filter, all);
    convolve(part, filter, { filled: [10, 20], wanted: [5, 25] });
    for (let at = 5 * columns; at < 25 * columns; at++) expect(part.re[at]).toBeCloseTo(whole.re[at]!, 6);
  });
});

describe('throughSpectrum', () => {
  /** Both planes there and back, over their size, and whether vectors did it. */
  function thereAndBack(wide: number, high: number) {
    const size = wide * high;
    const filled = (wave: (angle: number) => number) => Float32Array.from({ length: size }, (_, at) => wave(at * at));
    const pair: Pair = { columns: wide, rows: high, re: filled(Math.sin), im: filled(Math.cos) };
    const before = { re: pair.re.slice(), im: pair.im.slice() };
    const byVectors: boolean[] = [];
    const columnsSeen: number[] = [];
    throughSpectrum(
      pair,
      (scratch, first, count) => {
        byVectors.push(scratch.run !== undefined);
        for (let k = 0; k < count; k++) columnsSeen.push(first + k);
      },
      { filled: [0, high], wanted: [0, high] },
    );
    const apart = (plane: Float32Array, was: Float32Array) =>
      Math.max(...plane.map((value, at) => Math.abs(value / size - was[at]!)));
    return { apart: Math.max(apart(pair.re, before.re), apart(pair.im, before.im)), byVectors, columnsSeen };
  }

  it.each([
    [36, 40],
    [64, 3],
    [3, 64],
    [4320, 4],
    [4, 4320],
  ])('shows every column of %d × %d once, and ends where it began, times the size', (wide, high) => {
    const { apart, columnsSeen } = thereAndBack(wide, high);
    expect(apart).toBeLessThan(2e-6);
    expect(columnsSeen).toEqual(Array.from({ length: wide }, (_, column) => column));
  });

  it('goes by vectors where they have room, also after a plane that was too large for them', () => {
    expect(new Set(thereAndBack(4320, 4).byVectors)).toEqual(new Set([false]));
    expect(new Set(thereAndBack(36, 40).byVectors)).toEqual(new Set([true]));
  });
});
