import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { objectivePoints } from './objective-points.ts';
import type { Objective } from './part.ts';

const infinity: Objective = {
  part: 'objective',
  objectiveMagnification: 10,
  numericalAperture: 0.25,
  workingDistance: 12,
  design: { tubeFocalLength: 200 },
  parfocalDistance: 45,
};
const finite: Objective = {
  ...infinity,
  objectiveMagnification: 4,
  numericalAperture: 0.1,
  design: { imageDistance: 150 },
};

describe('objectivePoints', () => {
  it('is 20 mm with a beam of 10 mm for a tenfold infinity objective of 0.25', () => {
    expect(objectivePoints(infinity)).toEqual({ focalLength: 20, shoulderDepth: 25, frontPrincipalDepth: 8, beam: 10 });
  });

  it('stands, if made for a finite distance, where its magnification lets it', () => {
    const { focalLength, shoulderDepth } = objectivePoints(finite);
    const specimen = finite.parfocalDistance - shoulderDepth;
    const image = 150 + shoulderDepth;
    expect(image / specimen).toEqual(closeTo(4, { relative: 1e-13, because: 'rounding' }));
    expect(1 / specimen + 1 / image).toEqual(closeTo(1 / focalLength, { relative: 1e-13, because: 'rounding' }));
  });

  it('has its tip the working distance away from the specimen', () => {
    for (const objective of [infinity, finite]) {
      const { shoulderDepth, frontPrincipalDepth } = objectivePoints(objective);
      const length = shoulderDepth + frontPrincipalDepth;
      expect(length + 12).toEqual(closeTo(45, { relative: 1e-13, because: 'rounding' }));
    }
  });

  it('narrows its beam to nothing with the aperture', () => {
    expect(objectivePoints({ ...infinity, numericalAperture: 1e-9 }).beam).toBeLessThan(1e-7);
  });

  it('refuses an aperture that needs oil, and what is not above zero, by name', () => {
    expect(() => objectivePoints({ ...infinity, numericalAperture: 1.25 })).toThrow(OutOfRange);
    expect(() => objectivePoints({ ...infinity, numericalAperture: 1.25 })).toThrow(/numerical-aperture is 1.25/);
    expect(() => objectivePoints({ ...infinity, design: { tubeFocalLength: 0 } })).toThrow(/tube-focal-length is 0/);
    expect(() => objectivePoints({ ...finite, design: { imageDistance: -1 } })).toThrow(/image-distance is -1/);
    for (const workingDistance of [-1, 45, NaN]) {
      expect(() => objectivePoints({ ...infinity, workingDistance })).toThrow(`working-distance is ${workingDistance}`);
    }
    expect(() => objectivePoints({ ...infinity, objectiveMagnification: 0 })).toThrow(/objective-magnification is 0/);
  });
});
