import { describe, expect, it } from 'vitest';
import { fftOf, type Stage } from './fft-plan.ts';

describe('fftOf', () => {
  it.each([0, 7, 22, 1.5, NaN])('refuses the length %d', (length) => {
    expect(() => fftOf(length)).toThrow(/products of 2, 3 and 5/);
  });

  it('has passes whose radices multiply to the length, four before two, and as many parts as are left', () => {
    const passesOf = (length: number) => fftOf(length).stages.map(({ radix, parts }) => [radix, parts]);
    expect(passesOf(1)).toEqual([]);
    expect(passesOf(120)).toEqual([
      [4, 30],
      [2, 15],
      [3, 5],
      [5, 1],
    ]);
  });

  it('has cosine and sine of −2π p j/(radix parts) as twiddles', () => {
    const [{ twiddles }] = fftOf(12).stages as readonly [Stage];
    expect(twiddles).toHaveLength(2 * 3 * 3);
    for (let part = 0; part < 3; part++)
      for (let j = 1; j < 4; j++) {
        const angle = (-2 * Math.PI * part * j) / 12;
        expect(twiddles[6 * part + 2 * (j - 1)]).toBeCloseTo(Math.cos(angle), 7);
        expect(twiddles[6 * part + 2 * (j - 1) + 1]).toBeCloseTo(Math.sin(angle), 7);
      }
  });

  it('is made once', () => {
    expect(fftOf(48)).toBe(fftOf(48));
  });
});
