import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationOfReversedLens } from './magnification-of-reversed-lens.formula.ts';

const example = { registerDistance: 44, extension: 4, frontPrincipalDepth: 36, focalLength: 28 };

describe('magnificationOfReversedLens', () => {
  it('is twice life size for 84 mm between H and the sensor of a 28 mm lens', () => {
    expect(magnificationOfReversedLens(example)).toBe(2);
  });

  it('grows by one for every focal length of ring', () => {
    expect(magnificationOfReversedLens({ ...example, extension: 32 })).toBe(magnificationOfReversedLens(example) + 1);
  });

  it('tends to nothing as the lens grows as long as what holds it away', () => {
    expect(magnificationOfReversedLens({ ...example, focalLength: 84 / (1 + 1e-9) })).toEqual(
      closeTo(1e-9, { relative: 1e-6, because: 'two nearly equal numbers cancel' }),
    );
  });

  it('refuses a lens too long to focus, by name', () => {
    expect(() => magnificationOfReversedLens({ ...example, focalLength: 84 })).toThrow(OutOfRange);
    expect(() => magnificationOfReversedLens({ ...example, focalLength: 90 })).toThrow(/focal-length is 90/);
    expect(() => magnificationOfReversedLens({ ...example, extension: -1 })).toThrow(/extension is -1/);
  });
});
