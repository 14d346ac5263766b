import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { phaseAt, requirePupil, steepestPhase, stoppedDownAberration } from './pupil.ts';

const wideOpen = { sphericalAberration: 1.6, maxAperture: 2.8 };

describe('stoppedDownAberration', () => {
  it('is a sixteenth of 1.6 waves two stops down', () => {
    expect(stoppedDownAberration({ ...wideOpen, fNumber: 5.6 })).toBe(0.1);
  });

  it('falls as the fourth power of the f-number', () => {
    const [once, twice] = [8, 16].map((fNumber) => stoppedDownAberration({ ...wideOpen, fNumber })) as [number, number];
    expect(once / twice).toEqual(closeTo(16, { relative: 1e-15, because: 'rounding' }));
  });

  it('is what it was at the maximum aperture', () => {
    expect(stoppedDownAberration({ ...wideOpen, fNumber: 2.8 })).toBe(1.6);
  });

  it('refuses an f-number that the lens does not have, and an aberration that is no number, by name', () => {
    expect(() => stoppedDownAberration({ ...wideOpen, fNumber: 2 })).toThrow(/f-number is 2; accepted: not below/);
    expect(() => stoppedDownAberration({ ...wideOpen, sphericalAberration: NaN, fNumber: 4 })).toThrow(OutOfRange);
  });
});

describe('steepestPhase', () => {
  it('bounds the slope of the phase everywhere in the pupil', () => {
    for (const [defocusAberration, sphericalAberration] of [
      [1, 0],
      [-2, 2],
      [3, -4],
      [0, 5],
    ] as const) {
      const pupil = { defocusAberration, sphericalAberration };
      const slopes = Array.from(
        { length: 1000 },
        (_, k) => 1000 * (phaseAt(pupil, (k + 1) / 1000) - phaseAt(pupil, k / 1000)),
      );
      expect(Math.max(...slopes.map(Math.abs))).toBeLessThanOrEqual(steepestPhase(pupil) * (1 + 1e-9));
    }
  });
});

describe('requirePupil', () => {
  it('refuses aberrations at which geometry answers better, by name', () => {
    expect(() => requirePupil({ defocusAberration: 201, sphericalAberration: 0 })).toThrow(/defocus-aberration is 201/);
    expect(() => requirePupil({ defocusAberration: 0, sphericalAberration: -21 })).toThrow(
      /spherical-aberration is -21/,
    );
    expect(() => requirePupil({ defocusAberration: NaN, sphericalAberration: 0 })).toThrow(OutOfRange);
  });
});
