import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combinedMotionBlur } from '#core/exposure/combined-motion-blur.ts';
import { motionBlurSideways } from '#core/exposure/motion-blur-sideways.formula.ts';
import { motionBlurTurningAboutPupil } from '#core/exposure/motion-blur-turning-about-pupil.formula.ts';
import { motionBlurTurningAboutSensor } from '#core/exposure/motion-blur-turning-about-sensor.formula.ts';
import { motionBlurTurning } from '#core/exposure/motion-blur-turning.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { imageAcross, pupilAhead } from '#tests/support/chief-ray.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lenses, type LensAtWork } from '#tests/support/lenses.ts';

const turn = 1e-6;
const still = { shakeRate: turn, exposureTime: 1, stabilisation: 0 };
const finite = { relative: 1e-8, because: 'a turn of a millionth is not endlessly small, and ray heights cancel' };

/** Lenses with principal planes apart, or crossed over by as much as half a focal length. */
const thick = fc.record({ lens: lenses, part: fc.double({ min: -0.5, max: 1, noNaN: true }) });

/** The place of the image of a subject on the axis once the camera has turned about a point of its axis, counted ahead from H. */
function imageAfterTurn(lens: LensAtWork, pivot: number): number {
  const reach = subjectDistance(lens) - pivot;
  const seen = { across: reach * Math.sin(turn), ahead: pivot + reach * Math.cos(turn) };
  return Math.abs(imageAcross(lens, seen, imageDistance(lens)));
}

describe('a ray through a camera that has turned a little', () => {
  it('lands as far off as the formula says, about the middle of the sensor', () => {
    fc.assert(
      fc.property(thick, ({ lens, part }) => {
        const principalSeparation = part * lens.focalLength;
        const traced = imageAfterTurn(lens, -principalSeparation - imageDistance(lens));
        expect(motionBlurTurningAboutSensor({ ...lens, ...still, principalSeparation })).toEqual(
          closeTo(traced, finite),
        );
      }),
      { seed: 31, numRuns: 1000 },
    );
  });

  it('lands as far off as the formula says, about the entrance pupil', () => {
    fc.assert(
      fc.property(lenses, (lens) => {
        const traced = imageAfterTurn(lens, pupilAhead(lens));
        expect(motionBlurTurningAboutPupil({ ...lens, ...still })).toEqual(closeTo(traced, finite));
      }),
      { seed: 32, numRuns: 1000 },
    );
  });

  it('lands as far off as the general form says, about any point between subject and sensor', () => {
    fc.assert(
      fc.property(lenses, fc.double({ min: 0.01, max: 1, noNaN: true }), (lens, part) => {
        const distance = part * (subjectDistance(lens) + imageDistance(lens));
        const traced = imageAfterTurn(lens, subjectDistance(lens) - distance);
        expect(motionBlurTurning({ ...lens, ...still, distance })).toEqual(closeTo(traced, finite));
      }),
      { seed: 33, numRuns: 1000 },
    );
  });

  it('moves less about the pupil than about the sensor exactly where P > 1/(2 + m), principal planes together', () => {
    fc.assert(
      fc.property(lenses, (lens) => {
        const edge = 1 / (2 + lens.magnification);
        if (Math.abs(lens.pupilMagnification / edge - 1) < 1e-6) return;
        const aboutPupil = imageAfterTurn(lens, pupilAhead(lens));
        const aboutSensor = imageAfterTurn(lens, -imageDistance(lens));
        expect(aboutPupil < aboutSensor).toBe(lens.pupilMagnification > edge);
      }),
      { seed: 34, numRuns: 1000 },
    );
  });
});

describe('a ray through a camera that has swayed', () => {
  it('lands m times as far off, whatever the lens', () => {
    fc.assert(
      fc.property(lenses, (lens) => {
        const seen = { across: 0.3, ahead: subjectDistance(lens) };
        const traced = Math.abs(imageAcross(lens, seen, imageDistance(lens)));
        const blur = motionBlurSideways({ ...lens, sidewaysSpeed: 30, exposureTime: 0.01 });
        expect(blur).toEqual(closeTo(traced, { relative: 1e-9, because: 'ray heights cancel' }));
      }),
      { seed: 35, numRuns: 1000 },
    );
  });
});

describe('streaks in directions drawn by lot', () => {
  it('have the combined streak for the root of their mean square', () => {
    const chance = chanceFrom(36);
    const streaks = [0.03, 0.02, 0.05];
    const runs = 100_000;
    let squares = 0;
    for (let run = 0; run < runs; run++) {
      const angles = streaks.map(() => 2 * Math.PI * chance());
      const along = streaks.reduce((sum, streak, index) => sum + streak * Math.cos(angles[index]!), 0);
      const aside = streaks.reduce((sum, streak, index) => sum + streak * Math.sin(angles[index]!), 0);
      squares += along ** 2 + aside ** 2;
    }
    expect(Math.sqrt(squares / runs)).toEqual(
      closeTo(combinedMotionBlur(streaks), { relative: 0.01, because: 'the mean of 100000 draws strays by 0.002' }),
    );
  });
});
