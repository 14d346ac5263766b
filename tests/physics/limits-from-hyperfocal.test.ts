import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistanceFromPupil } from '#core/depth/hyperfocal-distance-from-pupil.formula.ts';
import { hyperfocalDistance } from '#core/depth/hyperfocal-distance.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { atHyperfocal, lensAtWork, lenses, type LensAtWork } from '#tests/support/lenses.ts';

function everyLens(law: (lens: LensAtWork) => void) {
  fc.assert(fc.property(lenses, law), { seed: 11, numRuns: 1000 });
}

describe('limits from the entrance pupil and from the hyperfocal distance', () => {
  const rounding = {
    relative: 1e-8,
    because: 'distances from the lens are up to 1e7 times the limits from the sharp plane',
  };

  it('agree for symmetric lenses in the books’ form, distances from the lens', () => {
    everyLens((drawn) => {
      const lens = lensAtWork({ ...drawn, pupilMagnification: 1 });
      if (atHyperfocal(lens)) return;
      const f = lens.focalLength;
      const s = subjectDistance(lens);
      const hyperfocal = hyperfocalDistance(lens);
      expect(s - nearLimit(lens)).toEqual(closeTo((s * (hyperfocal - f)) / (hyperfocal + s - 2 * f), rounding));
      const far = s < hyperfocal ? (s * (hyperfocal - f)) / (hyperfocal - s) : Infinity;
      expect(s + farLimit(lens)).toEqual(closeTo(far, rounding));
    });
  });

  it('agree for any pupils, distances from the entrance pupil', () => {
    everyLens((lens) => {
      if (atHyperfocal(lens)) return;
      const u = lens.entrancePupilDistance;
      const nearestFromPupil = lens.focalLength / lens.pupilMagnification;
      const hyperfocal = hyperfocalDistanceFromPupil(lens);
      const span = hyperfocal - nearestFromPupil;
      expect(u - nearLimit(lens)).toEqual(closeTo((u * span) / (hyperfocal + u - 2 * nearestFromPupil), rounding));
      expect(u + farLimit(lens)).toEqual(closeTo(u < hyperfocal ? (u * span) / (hyperfocal - u) : Infinity, rounding));
    });
  });

  it('begin at half the hyperfocal distance where a symmetric lens is focused there', () => {
    everyLens((drawn) => {
      const focused = hyperfocalDistance(drawn);
      const magnification = drawn.focalLength / (focused - drawn.focalLength);
      const lens = lensAtWork({ ...drawn, magnification, pupilMagnification: 1 });
      expect(focused - nearLimit(lens)).toEqual(closeTo(focused / 2, rounding));
    });
  });
});
