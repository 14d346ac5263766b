import { describe, expect, it } from 'vitest';
import { lifeSize } from '#tests/support/in-view.ts';
import { cropSlice, slicedSurface } from './sliced-surface.ts';
import { slicesOf } from './slices.ts';

const [columns, rows] = [30, 20];
const slices = slicesOf({ ...lifeSize, focusHeight: 3 }, 0, 8, 9);

const ramp = {
  light: [new Float32Array(columns * rows).fill(0.5)],
  coverage: new Float32Array(columns * rows).map((_, at) => (at % columns < 25 ? 1 : 0)),
  height: new Float32Array(columns * rows).map((_, at) => (8 * Math.floor(at / columns)) / (rows - 1)),
};

describe('a sliced surface', () => {
  const sliced = slicedSurface(ramp, columns, slices);

  it('gives its slices together all it has', () => {
    const sum = new Float32Array(columns * rows);
    for (const [slice, box] of sliced.boxes.entries()) {
      const share = { columns, re: new Float32Array(columns * rows), im: new Float32Array(columns * rows) };
      cropSlice(sliced, [sliced.coverage, sliced.light[0]!], slice, box!, share, box!.top * columns + box!.left);
      share.re.forEach((value, at) => (sum[at] = sum[at]! + value));
    }
    sum.forEach((value, at) => expect(value).toBeCloseTo(ramp.coverage[at]!, 6));
  });

  it('knows for each slice the box of what it has, no column that is not covered among it', () => {
    for (const box of sliced.boxes) expect(box).toMatchObject({ left: 0, right: 25 });
    expect(sliced.boxes[0]!.bottom).toBe(rows);
    expect(sliced.boxes.at(-1)!.top).toBe(0);
  });

  it('has no box where nothing lies', () => {
    const bare = slicedSurface({ ...ramp, coverage: new Float32Array(columns * rows) }, columns, slices);
    expect(bare.boxes.every((box) => box === undefined)).toBe(true);
  });
});
