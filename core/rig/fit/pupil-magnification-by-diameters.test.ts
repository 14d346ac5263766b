import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { pupilMagnificationByDiameters } from './pupil-magnification-by-diameters.ts';

describe('pupilMagnificationByDiameters', () => {
  it('is 0.6 for 18 mm seen from the back and 30 mm from the front', () => {
    expect(pupilMagnificationByDiameters({ fromFront: 30, fromBack: 18 })).toEqual({ value: 0.6, standardError: null });
  });

  it('turns to its inverse when the lens is turned round', () => {
    const { value } = pupilMagnificationByDiameters({ fromFront: 18, fromBack: 30 });
    expect(1 / value).toEqual(closeTo(0.6, { relative: 1e-15, because: 'rounding' }));
  });

  it('has the error of its two readings together: 3 and 4 per cent make 5', () => {
    const { value, standardError } = pupilMagnificationByDiameters({ fromFront: 40, fromBack: 30, readTo: 1.2 });
    expect(standardError! / value).toEqual(closeTo(0.05, { relative: 1e-14, because: 'rounding' }));
  });

  it('refuses a diameter of nothing, and an error of nothing', () => {
    expect(() => pupilMagnificationByDiameters({ fromFront: 0, fromBack: 18 })).toThrow(OutOfRange);
    expect(() => pupilMagnificationByDiameters({ fromFront: 30, fromBack: NaN })).toThrow(/from-back/);
    expect(() => pupilMagnificationByDiameters({ fromFront: 30, fromBack: 18, readTo: 0 })).toThrow(/read-to/);
  });
});
