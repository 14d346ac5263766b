import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backgroundBlur } from '#core/depth/background-blur.formula.ts';
import { backgroundWidth } from '#core/depth/background-width.formula.ts';
import { backgroundWidthOfCone, defocusBlurOfCone, magnificationOffPlaneOfCone } from '#core/depth/blur-of-cone.ts';
import { coneOfLens, coneOfPupil } from '#core/depth/cone.ts';
import { defocusBlur } from '#core/depth/defocus-blur.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { magnificationOffPlane } from '#core/depth/magnification-off-plane.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { numericalAperture } from '#core/gaussian/numerical-aperture.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { atHyperfocal, lensAtWork, lenses, type LensAtWork } from '#tests/support/lenses.ts';

function everyLens(law: (lens: LensAtWork) => void) {
  fc.assert(fc.property(lenses, law), { seed: 5, numRuns: 1000 });
}

const closeUpOf = (lens: LensAtWork) => depthOfFieldCloseUp({ ...lens, effectiveFNumber: effectiveFNumber(lens) });

describe('exact and close-up depth of field', () => {
  const textbookLens = { focalLength: 50, fNumber: 11, pupilMagnification: 1, circleOfConfusion: 0.02 };
  const partsBy = (magnification: number) => {
    const lens = lensAtWork({ ...textbookLens, magnification });
    return depthOfField(lens) / closeUpOf(lens) - 1;
  };

  it('part by 0.2 % at a tenth of life size and 5 % at a fiftieth, for f/11, c = 20 µm, f = 50 mm', () => {
    expect(partsBy(0.1)).toEqual(closeTo(0.002, { absolute: 0.0005, because: 'stated in per cent to one decimal' }));
    expect(partsBy(0.02)).toEqual(closeTo(0.05, { absolute: 0.005, because: 'stated in whole per cent' }));
  });

  it('meet as magnification grows, ever closer', () => {
    const gaps = [0.05, 0.1, 0.5, 1, 5, 20].map(partsBy);
    expect(gaps).toEqual([...gaps].sort((a, b) => b - a));
    expect(gaps.at(-1)).toEqual(closeTo(0, { absolute: 1e-7, because: '(c/(m D))² is 5e-8 there' }));
  });

  it('part by 1/(1 − (c/(m D))²), whatever the lens and its pupils', () => {
    everyLens((lens) => {
      const exact = depthOfField(lens);
      if (exact === Infinity || atHyperfocal(lens)) return;
      const share = lens.circleOfConfusion / (lens.magnification * lens.entrancePupil);
      expect(exact).toEqual(
        closeTo(closeUpOf(lens) / ((1 - share) * (1 + share)), {
          relative: 1e-8,
          because: 'rounding, enlarged by up to 1e6 at the edge',
        }),
      );
    });
  });

  it('need no focal length close up: lenses from 20 to 200 mm agree within 1 % at life size and f/8', () => {
    const depths = [20, 50, 100, 200].map((focalLength) =>
      depthOfField(lensAtWork({ ...textbookLens, fNumber: 8, focalLength, magnification: 1 })),
    );
    expect(Math.max(...depths) / Math.min(...depths)).toBeLessThan(1.01);
  });

  it('are a blur over an aperture: c/(m NA) where the cone is narrow', () => {
    everyLens((lens) => {
      const effective = effectiveFNumber(lens);
      if (effective <= lens.magnification / 2) return;
      const aperture = numericalAperture({ ...lens, effectiveFNumber: effective });
      expect(closeUpOf(lens)).toEqual(
        closeTo(lens.circleOfConfusion / (lens.magnification * aperture), {
          relative: 1e-14,
          because: 'a few roundings',
        }),
      );
    });
  });
});

describe('a lens seen by its pupil and by its cone', () => {
  const rounding = { relative: 1e-12, because: 'a few roundings' };

  it('has the same cone by its marked f-number and by its pupil', () => {
    everyLens((lens) => {
      const [marked, seen] = [coneOfLens(lens), coneOfPupil(lens)];
      expect(marked.effectiveFNumber).toEqual(closeTo(seen.effectiveFNumber, rounding));
      expect(marked.inverseEntrancePupilDistance).toEqual(closeTo(seen.inverseEntrancePupilDistance, rounding));
    });
  });

  it('has the same limits, blurs and perspective', () => {
    everyLens((lens) => {
      const cone = coneOfLens(lens);
      const limits = limitsOfCone(cone, lens.circleOfConfusion);
      expect(limits.nearLimit).toEqual(closeTo(nearLimit(lens), rounding));
      if (!atHyperfocal(lens)) {
        const far = farLimit(lens);
        // Near the hyperfocal distance what is left of the denominator has lost up to six digits.
        expect(limits.farLimit).toEqual(closeTo(far, { relative: 1e-8, because: 'rounding, enlarged by up to 1e6' }));
      }
      for (const share of [-0.9, -0.01, 0.3, 40]) {
        const offset = share * lens.entrancePupilDistance;
        const ours = defocusBlurOfCone({ ...cone, offset });
        expect(ours).toEqual(closeTo(defocusBlur({ ...lens, offset }), rounding));
        const size = closeTo(magnificationOffPlane({ ...lens, offset }), rounding);
        expect(magnificationOffPlaneOfCone({ ...cone, offset })).toEqual(size);
      }
      const backgroundDistance = 1000;
      const blur = closeTo(backgroundBlur({ ...lens, backgroundDistance }), rounding);
      expect(defocusBlurOfCone({ ...cone, offset: backgroundDistance })).toEqual(blur);
      const field = { fieldWidth: 36 / lens.magnification, backgroundDistance };
      const width = closeTo(backgroundWidth({ ...lens, ...field }), rounding);
      expect(backgroundWidthOfCone({ ...cone, ...field })).toEqual(width);
    });
  });

  it('comes down to the close-up form as the pupil goes away, on either side', () => {
    everyLens((lens) => {
      const { magnification, circleOfConfusion } = lens;
      const even = closeUpOf(lens) / 2;
      for (const side of [1, -1]) {
        const cone = {
          magnification,
          effectiveFNumber: effectiveFNumber(lens),
          inverseEntrancePupilDistance: (side * 1e-6) / even,
        };
        const { nearLimit: near, farLimit: far } = limitsOfCone(cone, circleOfConfusion);
        expect(near).toEqual(closeTo(even * (1 - side * 1e-6), { relative: 1e-11, because: 'the square of 1e-6' }));
        expect(far).toEqual(closeTo(even * (1 + side * 1e-6), { relative: 1e-11, because: 'the square of 1e-6' }));
      }
    });
  });
});

describe('the background of one picture', () => {
  it('is as wide as the angle seen from the entrance pupil makes it', () => {
    everyLens((lens) => {
      const u = lens.entrancePupilDistance;
      const field = fieldWidth({ sensorWidth: 36, magnification: lens.magnification });
      const halfAngle = Math.atan(field / 2 / u);
      const seen = backgroundWidth({ fieldWidth: field, entrancePupilDistance: u, backgroundDistance: 1000 });
      expect(seen).toEqual(
        closeTo(2 * (u + 1000) * Math.tan(halfAngle), { relative: 1e-12, because: 'tangent of an arctangent' }),
      );
    });
  });
});
