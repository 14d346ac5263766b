import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { magnificationWithCloseUpLens } from './magnification-with-close-up-lens.formula.ts';
import { workingDistanceWithCloseUpLens } from './working-distance-with-close-up-lens.formula.ts';

const example = { focalLength: 50, focusMagnification: 0.1, closeUpGap: 50, magnification: 0.3 };

/** The same where the power is given, not the magnification. */
function withPower({ closeUpPower, ...given }: Omit<typeof example, 'magnification'> & { closeUpPower: number }) {
  const magnification = magnificationWithCloseUpLens({ ...given, closeUpPower });
  return workingDistanceWithCloseUpLens({ ...given, magnification });
}

describe('workingDistanceWithCloseUpLens', () => {
  it('is a sixth of a metre for 0.3 on a lens focused half a metre away', () => {
    expect(workingDistanceWithCloseUpLens(example)).toEqual(closeTo(500 / 3, { relative: 1e-14, because: 'rounding' }));
  });

  it('adds dioptres: the lens focused at 1/x metres counts as x of them', () => {
    const [two, four] = [2, 4].map((closeUpPower) => withPower({ ...example, closeUpPower }));
    expect(1000 / four! - 1000 / two!).toEqual(closeTo(2, { relative: 1e-13, because: 'rounding' }));
    expect(1000 / two!).toEqual(closeTo(2 + 1000 / 500, { relative: 1e-13, because: 'rounding' }));
  });

  it('is 1/Φ on a lens at infinity, whatever the gap', () => {
    for (const closeUpGap of [-480, 0, 50, 1e6]) {
      expect(withPower({ ...example, focusMagnification: 0, closeUpGap, closeUpPower: 4 })).toBe(250);
    }
  });

  it('counts on for a close-up lens behind H, as on long lenses', () => {
    expect(workingDistanceWithCloseUpLens({ ...example, closeUpGap: -450, magnification: 0.5 })).toBe(200);
  });

  it('refuses by name a gap as long as the distance of the lens alone, and a magnification of 0', () => {
    expect(() => workingDistanceWithCloseUpLens({ ...example, closeUpGap: 550 })).toThrow(OutOfRange);
    expect(() => workingDistanceWithCloseUpLens({ ...example, closeUpGap: 550 })).toThrow(/close-up-gap is 550/);
    expect(() => workingDistanceWithCloseUpLens({ ...example, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
