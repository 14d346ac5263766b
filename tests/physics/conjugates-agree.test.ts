import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { extensionForMagnification } from '#core/gaussian/extension-for-magnification.formula.ts';
import { focalLengthFromConjugates } from '#core/gaussian/focal-length-from-conjugates.formula.ts';
import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceOfSubject } from '#core/gaussian/image-distance-of-subject.formula.ts';
import { imageDistance } from '#core/gaussian/image-distance.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { nearestFocusDistance } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { imageBeyondFocus, magnificationBeyondFocus } from '#core/gaussian/newton.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lenses, type LensAtWork } from '#tests/support/lenses.ts';

const rounding = { relative: 1e-12, because: 'a difference of distances up to 50 times as long loses two digits' };

function everyLens(law: (lens: LensAtWork) => void) {
  fc.assert(fc.property(lenses, law), { seed: 4, numRuns: 500 });
}

describe('the distances of one lens', () => {
  it('satisfy Newton’s form, counted from the focal points', () => {
    everyLens((lens) => {
      const { focalLength, magnification } = lens;
      const subjectBeyondFocus = subjectDistance(lens) - focalLength;
      const newton = { focalLength, subjectBeyondFocus };
      expect(imageBeyondFocus(newton)).toEqual(closeTo(imageDistance(lens) - focalLength, rounding));
      expect(magnificationBeyondFocus(newton)).toEqual(closeTo(magnification, rounding));
    });
  });

  it('satisfy the lens equation, from whichever two it is solved', () => {
    everyLens((lens) => {
      const given = { focalLength: lens.focalLength, subjectDistance: subjectDistance(lens) };
      expect(imageDistanceOfSubject(given)).toEqual(closeTo(imageDistance(lens), rounding));
      expect(magnificationOfSubject(given)).toEqual(closeTo(lens.magnification, rounding));
      const imaged = { subjectDistance: subjectDistance(lens), imageDistance: imageDistance(lens) };
      expect(focalLengthFromConjugates(imaged)).toEqual(closeTo(lens.focalLength, rounding));
    });
  });

  it('change places when the magnification is turned upside down', () => {
    everyLens((lens) => {
      const turned = { ...lens, magnification: 1 / lens.magnification };
      expect(imageDistance(turned)).toEqual(closeTo(subjectDistance(lens), rounding));
      expect(subjectDistance(turned)).toEqual(closeTo(imageDistance(lens), rounding));
    });
  });

  it('add up to the focus distance, which is shortest at life size and gives the focal length back', () => {
    everyLens((lens) => {
      const separation = { principalSeparation: lens.focalLength / 5 };
      const whole = focusDistance({ ...lens, ...separation });
      const sum = subjectDistance(lens) + imageDistance(lens) + separation.principalSeparation;
      expect(whole).toEqual(closeTo(sum, rounding));
      expect(whole).toBeGreaterThanOrEqual(nearestFocusDistance({ ...lens, ...separation }) * (1 - 1e-15));
      const back = closeFocusFocalLength({ ...lens, ...separation, focusDistance: whole });
      expect(back).toEqual(closeTo(lens.focalLength, rounding));
    });
  });

  it('make an extension of what the image moves back from its place at infinity', () => {
    everyLens((lens) => {
      const extension = extensionForMagnification({ ...lens, focusMagnification: 0 });
      expect(extension).toEqual(closeTo(imageDistance(lens) - lens.focalLength, rounding));
    });
  });
});
