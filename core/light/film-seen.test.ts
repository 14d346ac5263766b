import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { filmPlaceSeen, sizeSeen } from './film-seen.ts';

const rounding = { relative: 1e-12, because: 'a few roundings' } as const;
const film = { entrancePupilDistance: 200, incidenceAngle: Math.PI / 6 };

describe('filmPlaceSeen', () => {
  it('is where the ray from the pupil through the point meets the film', () => {
    for (const across of [-30, -5, 8, 40]) {
      const { along, depth } = filmPlaceSeen(film, across)!;
      // Similar triangles with their tips at the pupil: the place is as far aside as the ray that goes on to its depth.
      expect(along * Math.cos(Math.PI / 6)).toEqual(closeTo((across * (200 + depth)) / 200, rounding));
    }
  });

  it('meets the film at the set angle on the axis, at a larger one where it is turned away', () => {
    const angles = [-20, 0, 20].map((across) => filmPlaceSeen(film, across)!.incidenceAngle);
    expect(angles[1]).toEqual(closeTo(Math.PI / 6, rounding));
    expect(angles[0]).toBeLessThan(angles[1]!);
    expect(angles[2]).toBeGreaterThan(angles[1]!);
    // A ray that runs at atan(x/u) to the axis meets a flat film at just so much more.
    expect(angles[2]! - angles[1]!).toEqual(closeTo(Math.atan(20 / 200), rounding));
  });

  it('is nowhere for a ray that runs past the film', () => {
    expect(filmPlaceSeen(film, 400)).toBeUndefined();
    expect(filmPlaceSeen({ ...film, incidenceAngle: Math.PI / 2 }, 1)).toBeUndefined();
  });

  it('refuses an angle beyond a right one and a pupil in the film', () => {
    expect(() => filmPlaceSeen({ ...film, incidenceAngle: 2 }, 0)).toThrow(OutOfRange);
    expect(() => filmPlaceSeen({ ...film, entrancePupilDistance: 0 }, 0)).toThrow(OutOfRange);
    expect(() => filmPlaceSeen(film, NaN)).toThrow(OutOfRange);
  });
});

describe('sizeSeen', () => {
  it('is 1 in the sharp plane and a half twice as far away', () => {
    expect(sizeSeen(film, 0)).toBe(1);
    expect(sizeSeen(film, 400)).toEqual(closeTo(0.5, rounding));
  });

  it('agrees with the place that is seen', () => {
    const { along } = filmPlaceSeen(film, 25)!;
    expect(along * Math.cos(Math.PI / 6) * sizeSeen(film, along)!).toEqual(closeTo(25, rounding));
  });

  it('is nothing behind the pupil', () => {
    expect(sizeSeen(film, -500)).toBeUndefined();
  });
});
