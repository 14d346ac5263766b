import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyDiameter } from './airy-diameter.formula.ts';
import { bestEffectiveFNumber } from './best-effective-f-number.formula.ts';

const twoMillimetres = { magnification: 1, subjectDepth: 2, wavelength: 0.00055 };

describe('bestEffectiveFNumber', () => {
  it('is 27.3 for 2 mm of depth at life size in green light', () => {
    expect(bestEffectiveFNumber(twoMillimetres)).toEqual(closeTo(27.3, { absolute: 0.05, because: 'three figures' }));
  });

  it('makes the blur of the ends as wide as the Airy disc', () => {
    const effectiveFNumber = bestEffectiveFNumber({ ...twoMillimetres, magnification: 3 });
    const blur = (3 ** 2 * 2) / (2 * effectiveFNumber);
    const airy = airyDiameter({ wavelength: 0.00055, effectiveFNumber });
    expect(blur).toEqual(closeTo(airy, { relative: 1e-14, because: 'rounding' }));
  });

  it('doubles with the magnification, and with four times the depth', () => {
    const single = bestEffectiveFNumber(twoMillimetres);
    const rounding = { relative: 1e-15, because: 'rounding' };
    expect(bestEffectiveFNumber({ ...twoMillimetres, magnification: 2 })).toEqual(closeTo(2 * single, rounding));
    expect(bestEffectiveFNumber({ ...twoMillimetres, subjectDepth: 8 })).toEqual(closeTo(2 * single, rounding));
  });

  it('tends to nothing for a flat subject, which wants the lens wide open', () => {
    expect(bestEffectiveFNumber({ ...twoMillimetres, subjectDepth: 1e-9 })).toBeLessThan(1e-3);
  });

  it('refuses a depth of zero by name', () => {
    expect(() => bestEffectiveFNumber({ ...twoMillimetres, subjectDepth: 0 })).toThrow(OutOfRange);
    expect(() => bestEffectiveFNumber({ ...twoMillimetres, subjectDepth: 0 })).toThrow(/subject-depth is 0/);
  });
});
