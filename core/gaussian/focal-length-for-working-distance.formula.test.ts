import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focalLengthForWorkingDistance } from './focal-length-for-working-distance.formula.ts';
import { subjectDistance } from './subject-distance.formula.ts';
import { workingDistance } from './working-distance.formula.ts';

const wish = { workingDistance: 120, frontPrincipalDepth: 30, magnification: 0.5 };

describe('focalLengthForWorkingDistance', () => {
  it('is 50 mm for 120 mm of room at half life size with H 30 mm behind the rim', () => {
    expect(focalLengthForWorkingDistance(wish)).toBe(50);
  });

  it('is the lens that leaves just this room', () => {
    for (const magnification of [0.1, 0.37, 1, 4.2]) {
      const focalLength = focalLengthForWorkingDistance({ ...wish, magnification });
      const room = workingDistance({
        subjectDistance: subjectDistance({ focalLength, magnification }),
        frontPrincipalDepth: wish.frontPrincipalDepth,
      });
      expect(room).toEqual(closeTo(wish.workingDistance, { relative: 1e-14, because: 'a few roundings' }));
    }
  });

  it('comes to the whole way from H where the magnification is large', () => {
    const focalLength = focalLengthForWorkingDistance({ ...wish, magnification: 1e9 });
    expect(focalLength).toEqual(closeTo(150, { relative: 1e-8, because: 'the limit is approached as 1/m' }));
  });

  it('refuses by name an H so far in front of the rim that any lens would do', () => {
    expect(() => focalLengthForWorkingDistance({ ...wish, frontPrincipalDepth: -120 })).toThrow(OutOfRange);
    expect(() => focalLengthForWorkingDistance({ ...wish, frontPrincipalDepth: -150 })).toThrow(
      /front-principal-depth is -150/,
    );
    expect(() => focalLengthForWorkingDistance({ ...wish, magnification: 0 })).toThrow(/magnification is 0/);
  });
});
