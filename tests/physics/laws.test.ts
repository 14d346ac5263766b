import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backgroundBlur } from '#core/depth/background-blur.formula.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { farLimit } from '#core/depth/far-limit.formula.ts';
import { hyperfocalDistanceFromPupil } from '#core/depth/hyperfocal-distance-from-pupil.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { lensAtWork, lenses, type LensAtWork } from '#tests/support/lenses.ts';

/** By how much one thing is turned up: from a tenth of a per cent to ten times. */
const more = fc.double({ min: 1.001, max: 10, noNaN: true });

function everyLens(law: (lens: LensAtWork, factor: number) => void) {
  fc.assert(fc.property(lenses, more, law), { seed: 10, numRuns: 1000 });
}

const closeUpOf = (lens: LensAtWork) => depthOfFieldCloseUp({ ...lens, effectiveFNumber: effectiveFNumber(lens) });

/** The same lens with one setting turned up, its pupil worked out again. */
function turnedUp(
  lens: LensAtWork,
  setting: 'fNumber' | 'magnification' | 'circleOfConfusion' | 'focalLength',
  factor: number,
) {
  return lensAtWork({ ...lens, [setting]: lens[setting] * factor });
}

/** More, or infinite already. */
function expectMore(after: number, before: number) {
  if (before === Infinity) expect(after).toBe(Infinity);
  else expect(after).toBeGreaterThan(before);
}

describe('depth of field', () => {
  it('reaches farther behind the sharp plane than in front of it, and never to the pupil', () => {
    everyLens((lens) => {
      expect(nearLimit(lens)).toBeLessThan(farLimit(lens));
      expect(nearLimit(lens)).toBeLessThan(lens.entrancePupilDistance);
    });
  });

  it('never falls short of its close-up form', () => {
    everyLens((lens) => {
      expect(depthOfField(lens)).toBeGreaterThanOrEqual(closeUpOf(lens) * (1 - 1e-12));
    });
  });

  it('grows with the f-number and with the circle of confusion', () => {
    everyLens((lens, factor) => {
      expectMore(depthOfField(turnedUp(lens, 'fNumber', factor)), depthOfField(lens));
      expectMore(depthOfField(turnedUp(lens, 'circleOfConfusion', factor)), depthOfField(lens));
    });
  });

  it('shrinks as magnification grows, in both forms', () => {
    everyLens((lens, factor) => {
      const stronger = turnedUp(lens, 'magnification', factor);
      expectMore(depthOfField(lens), depthOfField(stronger));
      expect(closeUpOf(stronger)).toBeLessThan(closeUpOf(lens));
    });
  });

  it('shrinks with the focal length at the same magnification, towards the close-up form, which has none', () => {
    everyLens((lens, factor) => {
      const longer = turnedUp(lens, 'focalLength', factor);
      expect(depthOfField(longer)).toBeLessThanOrEqual(depthOfField(lens) * (1 + 1e-12));
    });
  });

  it('is infinite behind at the hyperfocal distance and beyond, and only there', () => {
    everyLens((lens) => {
      const reached = lens.entrancePupilDistance / hyperfocalDistanceFromPupil(lens);
      if (Math.abs(reached - 1) < 1e-9) return;
      expect(farLimit(lens) === Infinity).toBe(reached > 1);
    });
  });
});

describe('the background', () => {
  it('is never blurred by more than m D, and more the farther it is', () => {
    everyLens((lens, factor) => {
      const blurAt = (backgroundDistance: number) => backgroundBlur({ ...lens, backgroundDistance });
      expect(blurAt(1000 * factor)).toBeGreaterThan(blurAt(1000));
      expect(blurAt(1e6)).toBeLessThan(lens.magnification * lens.entrancePupil);
    });
  });
});

describe('a lens that comes closer', () => {
  it('moves away from the sensor while the subject comes nearer, but never within a focal length', () => {
    everyLens((lens, factor) => {
      const closer = turnedUp(lens, 'magnification', factor);
      expect(imageDistance(closer)).toBeGreaterThan(imageDistance(lens));
      expect(subjectDistance(closer)).toBeLessThan(subjectDistance(lens));
      expect(subjectDistance(closer)).toBeGreaterThan(lens.focalLength);
    });
  });

  it('loses light, and more of it the closer it comes', () => {
    everyLens((lens, factor) => {
      const lossAt = (one: LensAtWork) => lightLoss({ fNumber: one.fNumber, effectiveFNumber: effectiveFNumber(one) });
      expect(lossAt(lens)).toBeGreaterThan(0);
      expect(lossAt(turnedUp(lens, 'magnification', factor))).toBeGreaterThan(lossAt(lens));
    });
  });

  it('loses more light the smaller its exit pupil is beside its entrance pupil', () => {
    everyLens((lens, factor) => {
      const wider = effectiveFNumber({ ...lens, pupilMagnification: lens.pupilMagnification * factor });
      expect(wider).toBeLessThan(effectiveFNumber(lens));
    });
  });
});
