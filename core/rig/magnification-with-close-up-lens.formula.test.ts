import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationWithCloseUpLens } from './magnification-with-close-up-lens.formula.ts';

const example = { focalLength: 50, focusMagnification: 0.1, closeUpPower: 4, closeUpGap: 50 };

describe('magnificationWithCloseUpLens', () => {
  it('is 0.3 for four dioptres on a lens that has 0.1 at half a metre', () => {
    expect(magnificationWithCloseUpLens(example)).toEqual(closeTo(0.3, { relative: 1e-14, because: 'rounding' }));
  });

  it('doubles what it adds when the power doubles', () => {
    expect(magnificationWithCloseUpLens({ ...example, closeUpPower: 8 })).toEqual(
      closeTo(0.5, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('is f Φ/1000 on a lens at infinity, whatever the gap', () => {
    for (const closeUpGap of [-480, 0, 50, 1e6]) {
      expect(magnificationWithCloseUpLens({ ...example, focusMagnification: 0, closeUpGap })).toBe(0.2);
    }
  });

  it('counts on for a close-up lens behind H, as on long lenses', () => {
    expect(magnificationWithCloseUpLens({ ...example, closeUpGap: -450 })).toBe(0.5);
  });

  it('refuses by name a gap as long as the distance of the lens alone, and a lens farther than infinity', () => {
    expect(() => magnificationWithCloseUpLens({ ...example, closeUpGap: 550 })).toThrow(OutOfRange);
    expect(() => magnificationWithCloseUpLens({ ...example, closeUpGap: 600 })).toThrow(
      /close-up-gap is 600; accepted: less than 550/,
    );
    expect(() => magnificationWithCloseUpLens({ ...example, focusMagnification: -0.1 })).toThrow(
      /focus-magnification is -0.1/,
    );
  });
});
