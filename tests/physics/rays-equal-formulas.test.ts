import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defocusBlur } from '#core/depth/defocus-blur.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { numericalAperture } from '#core/gaussian/numerical-aperture.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lenses, type LensAtWork } from '#tests/support/lenses.ts';
import { rimRay } from '#tests/support/trace.ts';

const traced = (lens: LensAtWork, offset = 0) => rimRay({ ...lens, subjectDistance: subjectDistance(lens) }, offset);

function everyLens(law: (lens: LensAtWork) => void) {
  fc.assert(fc.property(lenses, law), { seed: 2, numRuns: 1000 });
}

describe('a ray through the rim of the pupil', () => {
  it('meets the axis at the sensor when it comes from the sharp plane', () => {
    everyLens((lens) => {
      const reach = lens.entrancePupil * (1 + lens.magnification);
      expect(traced(lens).heightAtSensor).toEqual(
        closeTo(0, { absolute: 1e-11 * reach, because: 'heights of that size cancel' }),
      );
    });
  });

  it('arrives in the cone of the effective f-number', () => {
    everyLens((lens) => {
      const cone = 1 / (2 * effectiveFNumber(lens));
      expect(-traced(lens).slopeAfter).toEqual(
        closeTo(cone, { relative: 1e-11, because: 'two slopes up to 250 times as steep cancel' }),
      );
    });
  });

  it('leaves the subject with the numerical aperture, which is a slope as well where sines are as good as tangents', () => {
    everyLens((lens) => {
      const slope = traced(lens).slopeBefore;
      if (slope >= 1) return;
      const aperture = numericalAperture({ ...lens, effectiveFNumber: effectiveFNumber(lens) });
      expect(aperture).toEqual(
        closeTo(slope, { relative: 1e-11, because: 'rounding, enlarged where the pupil is far from H' }),
      );
    });
  });

  it('draws the circle of confusion from a point at the near limit, and from one at the far limit', () => {
    everyLens((lens) => {
      const circle = closeTo(lens.circleOfConfusion, {
        relative: 1e-7,
        because: 'ray heights 1e7 times the circle cancel',
      });
      expect(2 * Math.abs(traced(lens, -nearLimit(lens)).heightAtSensor)).toEqual(circle);
      const far = farLimit(lens);
      if (far < Infinity) expect(2 * Math.abs(traced(lens, far).heightAtSensor)).toEqual(circle);
    });
  });

  it('stays within the circle of confusion from however far behind, where the far limit is infinite', () => {
    let infinite = 0;
    everyLens((lens) => {
      if (farLimit(lens) < Infinity) return;
      infinite++;
      expect(2 * Math.abs(traced(lens, 1e9).heightAtSensor)).toBeLessThan(lens.circleOfConfusion * (1 + 1e-7));
    });
    expect(infinite).toBeGreaterThan(20);
  });

  it('draws the blur of any point between the pupil and far behind the subject', () => {
    const share = fc.double({ min: -0.99, max: 10, noNaN: true });
    fc.assert(
      fc.property(lenses, share, (lens, part) => {
        const offset = part * lens.entrancePupilDistance;
        const blur = defocusBlur({ ...lens, offset });
        const reach = lens.entrancePupil * (1 + lens.magnification);
        const cancels = { absolute: 1e-11 * (blur + reach), because: 'ray heights of the pupil’s size cancel' };
        expect(2 * Math.abs(traced(lens, offset).heightAtSensor)).toEqual(closeTo(blur, cancels));
      }),
      { seed: 3, numRuns: 1000 },
    );
  });
});
