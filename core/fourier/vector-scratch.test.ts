import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { fftOf } from './fft-plan.ts';
import { inverseTransform, transform } from './fft.ts';
import { scratchFor } from './scratch.ts';
import { vectorScratch } from './vector-scratch.ts';
import { unsigned } from './wasm-code.ts';

describe('vectorScratch', () => {
  it.each([1, 2, 3, 4, 5, 6, 45, 60, 250, 512, 768])('transforms 8 signals of %d as the plain passes do', (length) => {
    const plain = scratchFor(length, 8);
    const vector = vectorScratch(8 * length)!;
    for (let at = 0; at < 8 * length; at++) {
      vector.re[at] = plain.re[at] = Math.sin(at * at);
      vector.im[at] = plain.im[at] = Math.cos(at * at + 1);
    }
    for (const step of [transform, inverseTransform]) {
      step(fftOf(length), plain, 8);
      step(fftOf(length), vector, 8);
      const single = { absolute: 3e-7 * length * Math.sqrt(length), because: 'single precision, two transforms' };
      for (let at = 0; at < 8 * length; at++) {
        expect(vector.re[at]).toEqual(closeTo(plain.re[at]!, single));
        expect(vector.im[at]).toEqual(closeTo(plain.im[at]!, single));
      }
    }
  });

  it('keeps its twiddles apart however many lengths come by', () => {
    const signal = (length: number) => {
      const scratch = vectorScratch(4 * length)!;
      scratch.re.fill(0, 0, 4 * length);
      scratch.im.fill(0, 0, 4 * length);
      scratch.re[4] = 1;
      transform(fftOf(length), scratch, 4);
      return scratch.re[4]!;
    };
    const lengths = [
      4096, 3888, 3750, 3600, 3456, 3240, 3125, 3072, 2916, 2880, 2700, 2592, 2500, 2400, 2250, 2187, 2160, 2048,
    ];
    for (const length of [...lengths, ...lengths.reverse()])
      expect(signal(length)).toBeCloseTo(Math.cos((2 * Math.PI) / length), 5);
  });

  it('is none for what does not fit', () => {
    expect(vectorScratch(1e7)).toBeUndefined();
  });
});

describe('unsigned', () => {
  it('takes seven bits a byte, the lowest first', () => {
    expect(unsigned(0)).toEqual([0]);
    expect(unsigned(127)).toEqual([127]);
    expect(unsigned(228)).toEqual([0xe4, 0x01]);
    expect(unsigned(624485)).toEqual([0xe5, 0x8e, 0x26]);
  });
});
