import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusBlur } from '#core/depth/defocus-blur.ts';
import { hiddenBand } from './hidden-band.formula.ts';

/** An edge 5 mm above the background, seen by a pupil of 10 mm from 105 mm. */
const edge = { entrancePupil: 10, edgeHeight: 5, entrancePupilDistance: 105 };

describe('hiddenBand', () => {
  it('is half a millimetre for a pupil of 10 mm at 105 mm and an edge 5 mm up', () => {
    expect(hiddenBand(edge)).toBe(0.5);
  });

  it('halves with the pupil', () => {
    expect(hiddenBand({ ...edge, entrancePupil: 5 })).toBe(0.25);
  });

  it('is m times smaller than the blur of the edge on the sensor', () => {
    const blur = defocusBlur({ ...edge, magnification: 0.8, offset: -5 });
    expect(0.8 * hiddenBand(edge)).toEqual(closeTo(blur, { relative: 1e-14, because: 'a few roundings' }));
  });

  it('tends to nothing for an edge on the background', () => {
    expect(hiddenBand({ ...edge, edgeHeight: 1e-12 })).toEqual(
      closeTo(1e-11 / 105, { relative: 1e-12, because: 'the edge’s height goes from the distance' }),
    );
  });

  it('refuses an edge at the pupil by name', () => {
    expect(() => hiddenBand({ ...edge, edgeHeight: 105 })).toThrow(OutOfRange);
    expect(() => hiddenBand({ ...edge, edgeHeight: 105 })).toThrow(/edge-height is 105/);
  });
});
