import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { entrancePupil } from './entrance-pupil.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { fNumberFromAperture } from './f-number-from-aperture.formula.ts';

describe('fNumberFromAperture', () => {
  it('is f/4 for a pupil 25 mm wide on a 100 mm lens', () => {
    expect(fNumberFromAperture({ focalLength: 100, entrancePupil: 25 })).toBe(4);
  });

  it('undoes what the f-number made of the focal length', () => {
    const width = entrancePupil({ focalLength: 85, fNumber: 1.8 });
    const marked = fNumberFromAperture({ focalLength: 85, entrancePupil: width });
    expect(marked).toEqual(closeTo(1.8, { relative: 1e-15, because: 'two roundings' }));
  });

  it('grows without bound as the pupil closes', () => {
    expect(fNumberFromAperture({ focalLength: 100, entrancePupil: 1e-9 })).toEqual(
      closeTo(1e11, { relative: 1e-15, because: 'one rounding' }),
    );
  });

  it('refuses a closed pupil by name', () => {
    expect(() => fNumberFromAperture({ focalLength: 50, entrancePupil: 0 })).toThrow(OutOfRange);
    expect(() => fNumberFromAperture({ focalLength: 50, entrancePupil: 0 })).toThrow(/entrance-pupil is 0/);
  });
});
