import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { fftOf } from './fft-plan.ts';
import { inverseTransform, transform } from './fft.ts';
import { scratchFor } from './scratch.ts';

/** *batch* signals of a length, not twice the same number. */
function filled(length: number, batch: number) {
  const scratch = scratchFor(length, batch);
  for (let at = 0; at < length * batch; at++) {
    scratch.re[at] = Math.sin(at * at);
    scratch.im[at] = Math.cos(3 * at * at + 1);
  }
  return scratch;
}

const energy = ({ re, im }: { re: Float32Array; im: Float32Array }) =>
  re.reduce((sum, value, at) => sum + value * value + im[at]! ** 2, 0);

describe('transform', () => {
  it.each([1, 2, 3, 4, 5, 6, 12, 30, 75, 128])('is the plain sum over all numbers of a signal of %d', (length) => {
    const scratch = filled(length, 3);
    const [re, im] = [scratch.re.slice(), scratch.im.slice()];
    transform(fftOf(length), scratch, 3);
    for (let signal = 0; signal < 3; signal++)
      for (let bin = 0; bin < length; bin++) {
        let [x, y] = [0, 0];
        for (let n = 0; n < length; n++) {
          const [c, s] = [Math.cos((2 * Math.PI * bin * n) / length), Math.sin((2 * Math.PI * bin * n) / length)];
          x += re[3 * n + signal]! * c + im[3 * n + signal]! * s;
          y += im[3 * n + signal]! * c - re[3 * n + signal]! * s;
        }
        const single = { absolute: 1e-6 * length, because: 'single precision' };
        expect(scratch.re[3 * bin + signal]).toEqual(closeTo(x, single));
        expect(scratch.im[3 * bin + signal]).toEqual(closeTo(y, single));
      }
  });

  it('keeps the energy, times the length (Parseval)', () => {
    const scratch = filled(720, 4);
    const before = energy(scratch);
    transform(fftOf(720), scratch, 4);
    expect(energy(scratch)).toEqual(closeTo(720 * before, { relative: 1e-5, because: 'single precision' }));
  });

  it('leaves each pass to the scratch where that has a way of its own', () => {
    const passes: [radix: number, stride: number][] = [];
    transform(fftOf(60), { ...filled(60, 4), run: (_, { radix }, stride) => passes.push([radix, stride]) }, 4);
    expect(passes).toEqual([
      [4, 4],
      [3, 16],
      [5, 48],
    ]);
  });

  it('comes back by inverseTransform, times the length', () => {
    const scratch = filled(600, 2);
    const re = scratch.re.slice();
    transform(fftOf(600), scratch, 2);
    inverseTransform(fftOf(600), scratch, 2);
    scratch.re.forEach((value, at) => {
      expect(value / 600).toEqual(closeTo(re[at]!, { absolute: 1e-6, because: 'single precision' }));
    });
  });
});
