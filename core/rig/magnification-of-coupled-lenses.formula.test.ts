import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationOfCoupledLenses } from './magnification-of-coupled-lenses.formula.ts';

const example = { mainLensFocalLength: 200, reversedLensFocalLength: 50 };

describe('magnificationOfCoupledLenses', () => {
  it('is four times life size for 50 mm on 200 mm', () => {
    expect(magnificationOfCoupledLenses(example)).toBe(4);
  });

  it('doubles when the reversed lens is half as long', () => {
    expect(magnificationOfCoupledLenses({ ...example, reversedLensFocalLength: 25 })).toBe(8);
  });

  it('is life size for two lenses alike', () => {
    expect(magnificationOfCoupledLenses({ mainLensFocalLength: 50, reversedLensFocalLength: 50 })).toBe(1);
  });

  it('refuses a focal length of zero by name', () => {
    expect(() => magnificationOfCoupledLenses({ ...example, reversedLensFocalLength: 0 })).toThrow(OutOfRange);
    expect(() => magnificationOfCoupledLenses({ ...example, reversedLensFocalLength: 0 })).toThrow(
      /reversed-lens[.]focal-length is 0/,
    );
  });
});
