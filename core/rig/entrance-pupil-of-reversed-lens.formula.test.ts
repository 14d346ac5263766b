import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupilOfReversedLens } from './entrance-pupil-of-reversed-lens.formula.ts';

const example = { pupilMagnification: 1.6, focalLength: 28, fNumber: 8 };

describe('entrancePupilOfReversedLens', () => {
  it('is 5.6 mm for a 28 mm lens at f/8 whose exit pupil is 1.6 times as wide', () => {
    expect(entrancePupilOfReversedLens(example)).toEqual(closeTo(5.6, { relative: 1e-14, because: 'rounding' }));
  });

  it('halves when the f-number doubles', () => {
    expect(entrancePupilOfReversedLens({ ...example, fNumber: 16 })).toBe(entrancePupilOfReversedLens(example) / 2);
  });

  it('is f/N for a symmetric lens, whichever way round', () => {
    expect(entrancePupilOfReversedLens({ ...example, pupilMagnification: 1 })).toBe(3.5);
  });

  it('refuses an f-number of zero by name', () => {
    expect(() => entrancePupilOfReversedLens({ ...example, fNumber: 0 })).toThrow(OutOfRange);
    expect(() => entrancePupilOfReversedLens({ ...example, fNumber: 0 })).toThrow(/f-number is 0/);
  });
});
