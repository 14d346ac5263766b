import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bicubicSampler } from './bicubic.ts';

const [columns, rows] = [9, 8];
const plane = (value: (x: number, y: number) => number) =>
  Float32Array.from({ length: columns * rows }, (_, at) => value(at % columns, Math.floor(at / columns)));
const single = { absolute: 3e-5, because: 'single precision' };

/** A product of parabolas, another along the columns than along the rows. */
const parabolas = (x: number, y: number) => (1 + x - 0.2 * x * x) * (2 - 0.5 * y + 0.1 * y * y);
const numbered = plane((x, y) => Math.sin(x * x + 3 * y * y));

function read(from: Float32Array, x: number, y: number): number {
  const into = new Float32Array(1);
  bicubicSampler({ columns, rows }, [from], [into])(x, y, 0);
  return into[0]!;
}

describe('bicubicSampler', () => {
  it('has its own value on every sample, at the rim too', () => {
    for (let y = 0; y < rows; y++)
      for (let x = 0; x < columns; x++)
        expect(read(numbered, x, y)).toEqual(closeTo(numbered[y * columns + x]!, single));
  });

  it('is right between samples for any parabola, away from the rim', () => {
    const from = plane(parabolas);
    for (let y = 1.15; y < rows - 2; y += 0.37)
      for (let x = 1.05; x < columns - 2; x += 0.41) expect(read(from, x, y)).toEqual(closeTo(parabolas(x, y), single));
  });

  it('reads the same at the rim as away from it where the outermost samples are gone on with by hand', () => {
    const [wide, high] = [columns + 8, rows + 8];
    const inside = (index: number, count: number) => Math.min(count - 1, Math.max(0, index - 4));
    const padded = Float32Array.from(
      { length: wide * high },
      (_, at) => numbered[inside(Math.floor(at / wide), rows) * columns + inside(at % wide, columns)]!,
    );
    const into = new Float32Array(1);
    const larger = bicubicSampler({ columns: wide, rows: high }, [padded], [into]);
    for (let y = -1.4; y < rows + 0.6; y += 0.23)
      for (let x = -1.3; x < columns + 0.6; x += 0.29) {
        larger(x + 4, y + 4, 0);
        expect(read(numbered, x, y)).toEqual(closeTo(into[0]!, single));
      }
  });

  it('reads several planes at once, writes each to its place, and gives their sum', () => {
    const into = [new Float32Array(3), new Float32Array(3)];
    const sample = bicubicSampler({ columns, rows }, [numbered, plane((x) => x)], into);
    for (const [x, y, at] of [
      [3.3, 4.2, 2],
      [0.3, 0.2, 1],
    ] as const) {
      const sum = sample(x, y, at);
      expect(into[0]![at]).toEqual(closeTo(read(numbered, x, y), single));
      expect(sum).toEqual(closeTo(into[0]![at]! + into[1]![at]!, single));
    }
    expect([into[0]![0], into[1]![0]]).toEqual([0, 0]);
  });
});
