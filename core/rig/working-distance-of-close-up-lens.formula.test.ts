import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingDistanceOfCloseUpLens } from './working-distance-of-close-up-lens.formula.ts';

const example = { closeUpPower: 4 };

describe('workingDistanceOfCloseUpLens', () => {
  it('is 250 mm for four dioptres', () => {
    expect(workingDistanceOfCloseUpLens(example)).toBe(250);
  });

  it('halves when the power doubles', () => {
    expect(workingDistanceOfCloseUpLens({ closeUpPower: 8 })).toBe(125);
  });

  it('grows without end as the power goes', () => {
    expect(workingDistanceOfCloseUpLens({ closeUpPower: 1e-6 })).toEqual(
      closeTo(1e9, { relative: 1e-14, because: 'rounding' }),
    );
  });

  it('refuses a power of zero by name', () => {
    expect(() => workingDistanceOfCloseUpLens({ ...example, closeUpPower: 0 })).toThrow(OutOfRange);
    expect(() => workingDistanceOfCloseUpLens({ ...example, closeUpPower: 0 })).toThrow(/close-up-power is 0/);
  });
});
