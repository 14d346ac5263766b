import { describe, expect, it } from 'vitest';
import { workingDistanceIntoTank } from '#core/gaussian/working-distance-into-tank.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { solveFor } from '#core/quantity/solve.ts';
import { workingDistanceIntoTankFormula } from '#core/gaussian/working-distance-into-tank.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthOfFieldInMedium } from './depth-of-field-in-medium.formula.ts';

describe('depthOfFieldInMedium', () => {
  it('is 1.064 mm in water for 0.8 mm in air', () => {
    expect(depthOfFieldInMedium({ refractiveIndex: 1.33, depthOfField: 0.8 })).toBe(1.064);
  });

  it('is what lies between the two places in the tank that seem to be at the limits', () => {
    const tank = {
      'air-gap': 50,
      'pane-thickness': 6,
      'pane.refractive-index': 1.5,
      'medium.refractive-index': 1.33,
    } as const;
    const placeOf = (distance: number) =>
      solveFor(workingDistanceIntoTankFormula, {
        ask: 'immersion-depth',
        given: { ...tank, 'working-distance': distance },
      }).roots[0]!.value;
    const focused = workingDistanceIntoTank({
      airGap: 50,
      paneThickness: 6,
      paneRefractiveIndex: 1.5,
      immersionDepth: 100,
      mediumRefractiveIndex: 1.33,
    });
    const [near, far] = [0.39, 0.41];
    expect(placeOf(focused + far) - placeOf(focused - near)).toEqual(
      closeTo(depthOfFieldInMedium({ refractiveIndex: 1.33, depthOfField: near + far }), {
        relative: 1e-12,
        because: 'a difference of two lengths a hundred times as long',
      }),
    );
  });

  it('is the depth itself in air', () => {
    expect(depthOfFieldInMedium({ refractiveIndex: 1, depthOfField: 0.8 })).toBe(0.8);
  });

  it('refuses an index below 1 and an endless depth by name', () => {
    expect(() => depthOfFieldInMedium({ refractiveIndex: 0.9, depthOfField: 1 })).toThrow(/refractive-index is 0.9/);
    expect(() => depthOfFieldInMedium({ refractiveIndex: 1.33, depthOfField: Infinity })).toThrow(OutOfRange);
  });
});
