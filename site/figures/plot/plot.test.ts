import { describe, expect, it } from 'vitest';
import { evenSamples, logSamples } from './plot.ts';

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
