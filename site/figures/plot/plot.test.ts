import { describe, expect, it } from 'vitest';
import { curvePath, evenSamples, logSamples } from './plot.ts';

describe.each([
  ['even', evenSamples],
  ['logarithmic', logSamples],
])('%s samples', (_, samples) => {
  it('begin and end at their ends to the last digit, and never leave them', () => {
    for (let hundredth = 1; hundredth <= 2000; hundredth++) {
      const [least, most] = [0.001, hundredth / 100];
      const found = samples(least, most, 81);
      expect([found.length, found[0], found.at(-1)]).toEqual([81, least, most]);
      expect(Math.max(...found)).toBe(most);
    }
  });
});

describe('a curve', () => {
  it('is broken where a point has no place', () => {
    const same = (value: number) => value;
    expect(
      curvePath(
        [
          [0, 0],
          [1, 1],
          [NaN, 2],
          [NaN, 3],
          [4, 4],
          [5, 4],
        ],
        same,
        same,
      ),
    ).toBe('M0.0 0.0L1.0 1.0M4.0 4.0L5.0 4.0');
    expect(curvePath([[NaN, 0]], same, same)).toBe('');
    expect(
      curvePath(
        [
          [NaN, 0],
          [1, 1],
        ],
        same,
        same,
      ),
    ).toBe('M1.0 1.0');
  });
});
