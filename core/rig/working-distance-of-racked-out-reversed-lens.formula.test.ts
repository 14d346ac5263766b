import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingDistanceOfRackedOutReversedLens } from './working-distance-of-racked-out-reversed-lens.formula.ts';
import { workingDistanceOfReversedLens } from './working-distance-of-reversed-lens.formula.ts';

const example = {
  reversedLensRegisterDistance: 44,
  focusTravel: 3,
  focalLength: 28,
  magnification: 2,
  rearProtrusion: 11,
};

describe('workingDistanceOfRackedOutReversedLens', () => {
  it('is 44 mm for a 28 mm lens at twice life size, 3 mm out and with 11 mm of glass behind its flange', () => {
    expect(workingDistanceOfRackedOutReversedLens(example)).toBe(44);
  });

  it('is that of a lens at infinity where nothing is racked out and nothing stands out', () => {
    expect(workingDistanceOfRackedOutReversedLens({ ...example, focusTravel: 0, rearProtrusion: 0 })).toBe(
      workingDistanceOfReversedLens(example),
    );
  });

  it('loses what the ring moves the flange and what stands out behind it, millimetre for millimetre', () => {
    const here = workingDistanceOfRackedOutReversedLens(example);
    expect(workingDistanceOfRackedOutReversedLens({ ...example, focusTravel: 5 })).toBe(here - 2);
    expect(workingDistanceOfRackedOutReversedLens({ ...example, rearProtrusion: 15 })).toBe(here - 4);
  });

  it('tends to what travel and rear glass leave of the register as magnification grows', () => {
    expect(workingDistanceOfRackedOutReversedLens({ ...example, magnification: 28e9 })).toEqual(
      closeTo(30, { absolute: 1e-8, because: 'f/m is 1e-9 mm' }),
    );
  });

  it('is negative where the sharp plane lies inside the lens', () => {
    expect(workingDistanceOfRackedOutReversedLens({ ...example, rearProtrusion: 60 })).toBe(-5);
  });

  it('refuses a travel below zero by name', () => {
    expect(() => workingDistanceOfRackedOutReversedLens({ ...example, focusTravel: -1 })).toThrow(OutOfRange);
    expect(() => workingDistanceOfRackedOutReversedLens({ ...example, focusTravel: -1 })).toThrow(/focus-travel is -1/);
  });
});
