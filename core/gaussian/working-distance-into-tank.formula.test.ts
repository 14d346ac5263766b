import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { imageThrough } from '#core/rig/image-through.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { workingDistanceIntoTank } from './working-distance-into-tank.formula.ts';

/** Water behind 6 mm of glass, 50 mm off. */
const tank = {
  airGap: 50,
  paneThickness: 6,
  paneRefractiveIndex: 1.5,
  immersionDepth: 133,
  mediumRefractiveIndex: 1.33,
};

describe('workingDistanceIntoTank', () => {
  it('is 154 mm for 133 mm of water behind 6 mm of glass and 50 mm of air', () => {
    expect(workingDistanceIntoTank(tank)).toBe(154);
  });

  it('is where two flat surfaces image the subject, which looks as large as it is', () => {
    const wall = [
      { radius: Infinity, thickness: 6, index: 1.5 },
      { radius: Infinity, thickness: 0, index: 1 },
    ];
    const { imageDistance, magnification } = imageThrough(wall, tank.immersionDepth, tank.mediumRefractiveIndex);
    // Counted from the outer face of the wall, in front of which the lens stands.
    expect(tank.airGap - imageDistance).toEqual(
      closeTo(workingDistanceIntoTank(tank), { relative: 1e-14, because: 'a few roundings' }),
    );
    expect(magnification).toEqual(closeTo(1, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('is the way there where all is air', () => {
    expect(workingDistanceIntoTank({ ...tank, paneRefractiveIndex: 1, mediumRefractiveIndex: 1 })).toBe(189);
  });

  it('refuses an index below that of air by name', () => {
    expect(() => workingDistanceIntoTank({ ...tank, mediumRefractiveIndex: 0.9 })).toThrow(OutOfRange);
    expect(() => workingDistanceIntoTank({ ...tank, mediumRefractiveIndex: 0.9 })).toThrow(
      /medium.refractive-index is 0.9/,
    );
  });
});
