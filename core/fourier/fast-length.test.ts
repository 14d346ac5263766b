import { describe, expect, it } from 'vitest';
import { fastLength } from './fast-length.ts';
import { fftOf } from './fft-plan.ts';

describe('fastLength', () => {
  it('is no shorter than asked and at most an eighth longer, and transforms', () => {
    for (let least = 16; least < 3000; least += 7) {
      expect(fastLength(least)).toBeGreaterThanOrEqual(least);
      expect(fastLength(least)).toBeLessThan(1.15 * least);
      expect(() => fftOf(fastLength(least))).not.toThrow();
    }
  });

  it('prefers, among lengths within a tenth, the one with the cheapest passes', () => {
    expect([767, 500, 250, 243, 125, 97, 33].map(fastLength)).toEqual([768, 512, 256, 256, 128, 100, 36]);
  });

  it('is the next that transforms where none lies within a tenth, from 1 up', () => {
    expect([-3, 0, 0.4, 1, 2, 7, 6.2, 11].map(fastLength)).toEqual([1, 1, 1, 1, 2, 8, 8, 12]);
  });
});
