import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { hyperfocalDistance } from './hyperfocal-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { hyperfocalDistanceFromPupil } from './hyperfocal-distance-from-pupil.formula.ts';

const lens = { focalLength: 50, fNumber: 10, circleOfConfusion: 0.025, pupilMagnification: 0.5 };

describe('hyperfocalDistanceFromPupil', () => {
  it('is 10.1 m for a 50 mm lens of pupil magnification 0.5 at f/10 and a circle of 25 µm', () => {
    expect(hyperfocalDistanceFromPupil(lens)).toBe(10100);
  });

  it('counts from H where the pupils lie in the principal planes', () => {
    expect(hyperfocalDistanceFromPupil({ ...lens, pupilMagnification: 1 })).toBe(hyperfocalDistance(lens));
  });

  it('tends to f²/(N c) as the exit pupil outgrows the entrance pupil', () => {
    expect(hyperfocalDistanceFromPupil({ ...lens, pupilMagnification: 1e9 })).toEqual(
      closeTo(10000, { relative: 1e-11, because: 'what is left is f/P' }),
    );
  });

  it('refuses a pupil magnification of zero by name', () => {
    expect(() => hyperfocalDistanceFromPupil({ ...lens, pupilMagnification: 0 })).toThrow(OutOfRange);
    expect(() => hyperfocalDistanceFromPupil({ ...lens, pupilMagnification: 0 })).toThrow(/pupil-magnification is 0/);
  });
});
