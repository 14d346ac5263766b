import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { backgroundWidth } from './background-width.formula.ts';
import { defocusBlur } from './defocus-blur.ts';
import { farLimit } from './far-limit.formula.ts';
import { magnificationOffPlane } from './magnification-off-plane.ts';
import { nearLimit } from './near-limit.formula.ts';

const seen = { magnification: 1, entrancePupilDistance: 100 };

describe('magnificationOffPlane', () => {
  it('is 0.8 a quarter of the way behind a sharp plane at life size', () => {
    expect(magnificationOffPlane({ ...seen, offset: 25 })).toBe(0.8);
  });

  it('is m in the sharp plane, more in front of it, less behind', () => {
    expect(magnificationOffPlane({ ...seen, offset: 0 })).toBe(1);
    expect(magnificationOffPlane({ ...seen, offset: -50 })).toBe(2);
    expect(magnificationOffPlane({ ...seen, offset: 100 })).toBe(0.5);
  });

  it('shows as much background as the width of the background says', () => {
    const width = backgroundWidth({ fieldWidth: 36, entrancePupilDistance: 100, backgroundDistance: 300 });
    expect(36 / magnificationOffPlane({ ...seen, offset: 300 })).toBe(width);
  });

  it('makes the picture of a slanted scale evenly sharp on both sides, though more is sharp behind', () => {
    const lens = { ...seen, entrancePupil: 5 };
    const given = { ...lens, circleOfConfusion: 1 };
    const [near, far] = [-nearLimit(given), farLimit(given)];
    // On a scale at 45° a mark stands as far from the axis as from the sharp plane.
    const place = (offset: number) => offset * magnificationOffPlane({ ...seen, offset });
    const roundings = { relative: 1e-13, because: 'a few roundings' };
    expect(place(far)).toEqual(closeTo(-place(near), roundings));
    expect(defocusBlur({ ...lens, offset: far })).toEqual(closeTo(defocusBlur({ ...lens, offset: near }), roundings));
  });

  it('refuses the entrance pupil and what lies behind it', () => {
    expect(() => magnificationOffPlane({ ...seen, offset: -100 })).toThrow(OutOfRange);
    expect(() => magnificationOffPlane({ ...seen, offset: Infinity })).toThrow(OutOfRange);
  });
});
