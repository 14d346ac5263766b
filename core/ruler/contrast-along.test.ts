import { expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { contrastAlong } from './contrast-along.ts';
import { densityAt, marksAt, placeOfMark, sampleAt } from './comb.ts';

const shape = { cycles: 40, drift: 0.1 };
const count = 1201;
const wave = (light: number, strength: (mark: number) => number) =>
  Float64Array.from({ length: count }, (_, at) => {
    const mark = marksAt(shape, sampleAt(at, count));
    return light * (1 + strength(mark) * Math.cos(2 * Math.PI * (mark + 0.2)));
  });

it('the contrast along a comb is its amplitude over the mean light, mark by mark, however light it is', () => {
  for (const light of [0.2, 0.6]) {
    const contrasts = contrastAlong(
      wave(light, (mark) => 0.5 + 0.01 * mark),
      shape,
      2400,
    );
    for (const { mark, contrast, density } of contrasts) {
      expect(contrast).toEqual(
        closeTo(0.5 + 0.01 * mark, { relative: 0.03, because: 'thirty samples a mark, both ends of it counted' }),
      );
      // Twice as many pixels as samples.
      expect(density).toBe(densityAt(shape, placeOfMark(shape, mark)) / 2400);
    }
    // From −40·½/0.95 = −21.1 to 40·½/1.05 = 19.05, without the outermost at each end.
    expect(contrasts.map(({ mark }) => mark)).toEqual(Array.from({ length: 38 }, (_, at) => at - 19.5));
  }
});

it('the contrast along a comb leaves out marks that are finer than four samples, and a line without light', () => {
  expect(contrastAlong(new Float64Array(61).fill(0.5), { cycles: 40, drift: 0 }, 60)).toEqual([]);
  expect(contrastAlong(new Float64Array(count), shape, 1200)).toEqual([]);
});
