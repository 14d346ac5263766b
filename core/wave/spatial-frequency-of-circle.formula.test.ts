import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { spatialFrequencyOfCircle } from './spatial-frequency-of-circle.formula.ts';

describe('spatialFrequencyOfCircle', () => {
  it('is 25 line pairs per millimetre for a circle of 20 µm', () => {
    expect(spatialFrequencyOfCircle({ circleOfConfusion: 0.02 })).toBe(25);
  });

  it('doubles when the circle halves', () => {
    expect(spatialFrequencyOfCircle({ circleOfConfusion: 0.01 })).toBe(
      2 * spatialFrequencyOfCircle({ circleOfConfusion: 0.02 }),
    );
  });

  it('tends to zero as anything goes', () => {
    expect(spatialFrequencyOfCircle({ circleOfConfusion: 1e6 })).toBe(5e-7);
  });

  it('refuses a circle of zero by name', () => {
    expect(() => spatialFrequencyOfCircle({ circleOfConfusion: 0 })).toThrow(OutOfRange);
    expect(() => spatialFrequencyOfCircle({ circleOfConfusion: 0 })).toThrow(/circle-of-confusion is 0/);
  });
});
