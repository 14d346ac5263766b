import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationWithConverter } from './magnification-with-converter.formula.ts';

const example = { converterFactor: 2, focusMagnification: 0.1, extension: 25, focalLength: 50 };

describe('magnificationWithConverter', () => {
  it('is 1.2 for a 2 times converter behind a 25 mm ring on 50 mm focused to 0.1', () => {
    expect(magnificationWithConverter(example)).toBe(1.2);
  });

  it('doubles when the factor doubles', () => {
    expect(magnificationWithConverter({ ...example, converterFactor: 4 })).toBe(2.4);
  });

  it('is nothing for a lens at infinity without rings', () => {
    expect(magnificationWithConverter({ ...example, focusMagnification: 0, extension: 0 })).toBe(0);
  });

  it('refuses a factor of one by name', () => {
    expect(() => magnificationWithConverter({ ...example, converterFactor: 1 })).toThrow(OutOfRange);
    expect(() => magnificationWithConverter({ ...example, converterFactor: 1 })).toThrow(/converter-factor is 1/);
  });
});
