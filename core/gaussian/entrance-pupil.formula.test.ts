import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupil } from './entrance-pupil.formula.ts';

describe('entrancePupil', () => {
  it('is 25 mm wide for a 50 mm lens at f/2', () => {
    expect(entrancePupil({ focalLength: 50, fNumber: 2 })).toBe(25);
  });

  it('halves its area when the f-number grows by the root of two', () => {
    const open = entrancePupil({ focalLength: 90, fNumber: 4 });
    const stopped = entrancePupil({ focalLength: 90, fNumber: 4 * Math.SQRT2 });
    expect((stopped / open) ** 2).toEqual(closeTo(0.5, { relative: 1e-15, because: 'two roundings' }));
  });

  it('vanishes as the lens is stopped down', () => {
    expect(entrancePupil({ focalLength: 50, fNumber: 1e12 })).toBe(5e-11);
  });

  it('refuses an f-number of zero by name', () => {
    expect(() => entrancePupil({ focalLength: 50, fNumber: 0 })).toThrow(OutOfRange);
    expect(() => entrancePupil({ focalLength: 50, fNumber: 0 })).toThrow(/f-number is 0/);
  });
});
