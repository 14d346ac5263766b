import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { coneOfLens, coneOfPupil, requireCone } from './cone.ts';

describe('coneOfPupil', () => {
  const seen = { magnification: 1, entrancePupil: 5, entrancePupilDistance: 100 };

  it('is f/20 seen from 100 mm through a pupil of 5 mm at life size', () => {
    expect(coneOfPupil(seen)).toEqual({ magnification: 1, effectiveFNumber: 20, inverseEntrancePupilDistance: 0.01 });
  });

  it('is as slender with the pupil as far behind the subject', () => {
    const behind = coneOfPupil({ ...seen, entrancePupilDistance: -100 });
    expect(behind).toEqual({ magnification: 1, effectiveFNumber: 20, inverseEntrancePupilDistance: -0.01 });
  });

  it('refuses a pupil at the subject, and one of no width, by name', () => {
    expect(() => coneOfPupil({ ...seen, entrancePupilDistance: 0 })).toThrow(/effective-f-number is 0/);
    expect(() => coneOfPupil({ ...seen, entrancePupilDistance: Infinity })).toThrow(
      /entrance-pupil-distance is Infinity/,
    );
    expect(() => coneOfPupil({ ...seen, entrancePupil: 0 })).toThrow(OutOfRange);
    expect(() => coneOfPupil({ ...seen, magnification: NaN })).toThrow(/magnification is NaN/);
  });
});

describe('coneOfLens', () => {
  const lens = { focalLength: 50, fNumber: 8, pupilMagnification: 0.5, magnification: 1 };

  it('is that of the pupil the lens has', () => {
    // u = 50 (1 + 2), D = 50/8
    const { effectiveFNumber, inverseEntrancePupilDistance } = coneOfLens(lens);
    const pupil = coneOfPupil({ magnification: 1, entrancePupil: 50 / 8, entrancePupilDistance: 150 });
    const rounding = { relative: 1e-15, because: 'a few roundings' };
    expect(effectiveFNumber).toEqual(closeTo(pupil.effectiveFNumber, rounding));
    expect(inverseEntrancePupilDistance).toEqual(closeTo(1 / 150, rounding));
  });

  it.each(Object.keys(lens))('refuses a %s that is none by name', (name) => {
    for (const value of [0, -1, NaN, Infinity])
      expect(() => coneOfLens({ ...lens, [name]: value })).toThrow(OutOfRange);
  });
});

describe('requireCone', () => {
  it('lets a pupil be anywhere, and gives the three numbers alone', () => {
    for (const inverseEntrancePupilDistance of [-3, 0, 3]) {
      const cone = { magnification: 1, effectiveFNumber: 8, inverseEntrancePupilDistance };
      expect(requireCone({ ...cone, workingDistance: 3 } as typeof cone)).toEqual(cone);
    }
  });

  it.each([
    ['magnification', 0],
    ['effectiveFNumber', -1],
    ['inverseEntrancePupilDistance', Infinity],
  ])('refuses a %s of %d', (name, value) => {
    const cone = { magnification: 1, effectiveFNumber: 8, inverseEntrancePupilDistance: 0 };
    expect(() => requireCone({ ...cone, [name]: value })).toThrow(OutOfRange);
  });
});
