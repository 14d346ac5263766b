import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationWithCloseUpLens } from './magnification-with-close-up-lens.formula.ts';

const example = { focusMagnification: 0.1, closeUpPower: 4, mainLensSubjectDistance: 520, closeUpGap: 20 };

describe('magnificationWithCloseUpLens', () => {
  it('is 0.3 for four dioptres on a lens that has 0.1 at half a metre', () => {
    expect(magnificationWithCloseUpLens(example)).toEqual(closeTo(0.3, { relative: 1e-14, because: 'rounding' }));
  });

  it('doubles what it adds when the power doubles', () => {
    expect(magnificationWithCloseUpLens({ ...example, closeUpPower: 8 })).toEqual(
      closeTo(0.5, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('tends to f Φ as the lens is focused farther away', () => {
    const focusMagnification = 1e-9;
    const mainLensSubjectDistance = 50 * (1 + 1 / focusMagnification);
    expect(magnificationWithCloseUpLens({ ...example, focusMagnification, mainLensSubjectDistance })).toEqual(
      closeTo(0.2, { relative: 1e-8, because: 'm₀ is 1e-9' }),
    );
  });

  it('counts on for a close-up lens behind H, as on long lenses', () => {
    expect(magnificationWithCloseUpLens({ ...example, closeUpGap: -480 })).toBe(0.5);
  });

  it('refuses a lens at infinity and a gap as long as the distance, by name', () => {
    expect(() => magnificationWithCloseUpLens({ ...example, focusMagnification: 0 })).toThrow(OutOfRange);
    expect(() => magnificationWithCloseUpLens({ ...example, focusMagnification: 0 })).toThrow(
      /focus-magnification is 0/,
    );
    expect(() => magnificationWithCloseUpLens({ ...example, closeUpGap: 600 })).toThrow(/close-up-gap is 600/);
  });
});
