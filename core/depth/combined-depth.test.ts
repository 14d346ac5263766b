import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { combinedDepth } from './combined-depth.ts';

describe('combinedDepth', () => {
  it('is 15.2 µm for an objective 10×/0.25, green light and a blur of 16 µm on the sensor', () => {
    // Geometry gives c/(m NA) = 6.4 µm, waves 8.8 µm.
    expect(combinedDepth({ depthOfField: 0.016 / (10 * 0.25), waveDepth: 0.00055 / 0.25 ** 2 })).toEqual(
      closeTo(0.0152, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is more than either depth alone', () => {
    const both = combinedDepth({ depthOfField: 0.3, waveDepth: 0.2 });
    expect(both).toBeGreaterThan(0.3);
    expect(both).toBeGreaterThan(0.2);
  });

  it('tends to the depth from geometry where waves do not matter', () => {
    expect(combinedDepth({ depthOfField: 10, waveDepth: 1e-12 })).toEqual(
      closeTo(10, { relative: 1e-12, because: 'what is added is 1e-13 of it' }),
    );
  });

  it('is infinite where the depth of field is', () => {
    expect(combinedDepth({ depthOfField: Infinity, waveDepth: 0.2 })).toBe(Infinity);
  });

  it('refuses an infinite wave depth, and a depth of zero', () => {
    expect(() => combinedDepth({ depthOfField: 1, waveDepth: Infinity })).toThrow(OutOfRange);
    expect(() => combinedDepth({ depthOfField: 0, waveDepth: 1 })).toThrow(/depth-of-field is 0/);
  });
});
