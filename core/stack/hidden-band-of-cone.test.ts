import { describe, expect, it } from 'vitest';
import { coneOfPupil } from '#core/depth/cone.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { hiddenBandOfCone } from './hidden-band-of-cone.ts';
import { hiddenBand } from './hidden-band.formula.ts';

const telecentric = { magnification: 2, effectiveFNumber: 20, inverseEntrancePupilDistance: 0 };

describe('hiddenBandOfCone', () => {
  it('is half a millimetre for an edge 5 mm up, twice life size at an effective f/20, through a telecentric chain', () => {
    expect(hiddenBandOfCone({ ...telecentric, edgeHeight: 5 })).toBe(0.5);
  });

  it('is that of the pupil where one stands in front', () => {
    const seen = { magnification: 0.5, entrancePupil: 10, entrancePupilDistance: 105 };
    expect(hiddenBandOfCone({ ...coneOfPupil(seen), edgeHeight: 5 })).toEqual(
      closeTo(hiddenBand({ ...seen, edgeHeight: 5 }), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is narrower with the pupil behind the subject', () => {
    expect(hiddenBandOfCone({ ...telecentric, inverseEntrancePupilDistance: -0.05, edgeHeight: 5 })).toBe(0.4);
  });

  it('refuses an edge of no height, and one at the pupil', () => {
    expect(() => hiddenBandOfCone({ ...telecentric, edgeHeight: 0 })).toThrow(/edge-height is 0/);
    expect(() => hiddenBandOfCone({ ...telecentric, inverseEntrancePupilDistance: 0.2, edgeHeight: 5 })).toThrow(
      OutOfRange,
    );
  });
});
