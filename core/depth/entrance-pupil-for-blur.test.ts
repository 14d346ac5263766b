import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusBlur } from './defocus-blur.ts';
import { entrancePupilForBlur } from './entrance-pupil-for-blur.ts';
import { nearLimit } from './near-limit.formula.ts';

const point = { magnification: 1, entrancePupilDistance: 100, offset: -20, defocusBlur: 1.25 };

describe('entrancePupilForBlur', () => {
  it('is 5 mm for a blur of 1.25 mm, 20 mm in front of a sharp plane at 100 mm, life size', () => {
    expect(entrancePupilForBlur(point)).toBe(5);
  });

  it('undoes the blur of a point on either side', () => {
    const roundings = { relative: 1e-14, because: 'four roundings there and back' };
    for (const offset of [-60, -3, 0.2, 400]) {
      const entrancePupil = entrancePupilForBlur({ ...point, offset });
      expect(defocusBlur({ ...point, entrancePupil, offset })).toEqual(closeTo(1.25, roundings));
    }
  });

  it('puts the near limit where it was asked to be', () => {
    const entrancePupil = entrancePupilForBlur({ ...point, offset: -0.4, defocusBlur: 0.02 });
    const near = nearLimit({ ...point, entrancePupil, circleOfConfusion: 0.02 });
    expect(near).toEqual(closeTo(0.4, { relative: 1e-13, because: 'a few roundings' }));
  });

  it('tends to b/m for a point far behind', () => {
    const entrancePupil = entrancePupilForBlur({ ...point, magnification: 0.5, offset: 1e9 });
    expect(entrancePupil).toEqual(
      closeTo(2.5, { relative: 1e-6, because: 'the point is ten million times as far as the subject' }),
    );
  });

  it('refuses the sharp plane, the pupil itself and what lies behind it', () => {
    expect(() => entrancePupilForBlur({ ...point, offset: 0 })).toThrow(OutOfRange);
    expect(() => entrancePupilForBlur({ ...point, offset: -100 })).toThrow(/entrance-pupil-distance is 0/);
    expect(() => entrancePupilForBlur({ ...point, defocusBlur: -1 })).toThrow(/defocus-blur is -1/);
  });
});
