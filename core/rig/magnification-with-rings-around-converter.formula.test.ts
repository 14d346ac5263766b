import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationWithRingsAroundConverter } from './magnification-with-rings-around-converter.formula.ts';

const example = {
  workingConverterFactor: 2.45,
  focusMagnification: 1,
  frontRingExtension: 0,
  focalLength: 72,
  rearRingExtension: 36,
  converterFactor: 2,
};
const before = { ...example, workingConverterFactor: 2, frontRingExtension: 36, rearRingExtension: 0 };

describe('magnificationWithRingsAroundConverter', () => {
  it('is 2.7 for 36 mm behind a 2 times converter on 72 mm at life size', () => {
    expect(magnificationWithRingsAroundConverter(example)).toBeCloseTo(2.7, 12);
  });

  it('is more with the same ring before the converter', () => {
    expect(magnificationWithRingsAroundConverter(before)).toBe(3);
  });

  it('is a ring on a lens of k times the focal length, far away', () => {
    const far = { ...example, focusMagnification: 0 };
    expect(magnificationWithRingsAroundConverter(far)).toBe(36 / 144);
  });

  it('is what the lens gives, enlarged, without rings', () => {
    expect(magnificationWithRingsAroundConverter({ ...before, frontRingExtension: 0 })).toBe(2);
  });

  it('refuses a working factor of one by name', () => {
    const bad = { ...example, workingConverterFactor: 1 };
    expect(() => magnificationWithRingsAroundConverter(bad)).toThrow(OutOfRange);
    expect(() => magnificationWithRingsAroundConverter(bad)).toThrow(/converter-factor is 1/);
  });
});
