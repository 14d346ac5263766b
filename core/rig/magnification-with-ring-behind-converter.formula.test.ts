import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationWithRingBehindConverter } from './magnification-with-ring-behind-converter.formula.ts';

const example = { extension: 25, converterFactor: 2, focalLength: 50 };

describe('magnificationWithRingBehindConverter', () => {
  it('is a quarter of life size for 25 mm behind a 2 times converter on 50 mm', () => {
    expect(magnificationWithRingBehindConverter(example)).toBe(0.25);
  });

  it('doubles when the ring doubles', () => {
    expect(magnificationWithRingBehindConverter({ ...example, extension: 50 })).toBe(0.5);
  });

  it('is nothing without a ring', () => {
    expect(magnificationWithRingBehindConverter({ ...example, extension: 0 })).toBe(0);
  });

  it('refuses a factor of one by name', () => {
    expect(() => magnificationWithRingBehindConverter({ ...example, converterFactor: 1 })).toThrow(OutOfRange);
    expect(() => magnificationWithRingBehindConverter({ ...example, converterFactor: 1 })).toThrow(
      /converter-factor is 1/,
    );
  });
});
