import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingDistanceWithCloseUpLens } from './working-distance-with-close-up-lens.formula.ts';

const example = { closeUpPower: 4, mainLensSubjectDistance: 520, closeUpGap: 20 };

describe('workingDistanceWithCloseUpLens', () => {
  it('is a sixth of a metre for four dioptres on a lens focused half a metre away', () => {
    expect(workingDistanceWithCloseUpLens(example)).toEqual(closeTo(500 / 3, { relative: 1e-14, because: 'rounding' }));
  });

  it('adds dioptres: the lens focused at 1/x metres counts as x of them', () => {
    const two = workingDistanceWithCloseUpLens({ closeUpPower: 2, mainLensSubjectDistance: 520, closeUpGap: 20 });
    expect(1000 / workingDistanceWithCloseUpLens(example) - 1000 / two).toEqual(
      closeTo(2, { relative: 1e-13, because: 'rounding' }),
    );
  });

  it('tends to 1/Φ as the lens is focused farther away', () => {
    expect(workingDistanceWithCloseUpLens({ ...example, mainLensSubjectDistance: 1e12 })).toEqual(
      closeTo(250, { relative: 1e-9, because: '1/s is 2.5e-10 of Φ' }),
    );
  });

  it('counts on for a close-up lens behind H, as on long lenses', () => {
    expect(workingDistanceWithCloseUpLens({ ...example, closeUpGap: -480 })).toBe(200);
  });

  it('refuses a gap as long as the distance by name', () => {
    expect(() => workingDistanceWithCloseUpLens({ ...example, closeUpGap: 520 })).toThrow(OutOfRange);
    expect(() => workingDistanceWithCloseUpLens({ ...example, closeUpGap: 520 })).toThrow(/close-up-gap is 520/);
  });
});
