import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { farLimit } from './far-limit.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { hyperfocalDistance } from './hyperfocal-distance.formula.ts';

const lens = { focalLength: 50, fNumber: 10, circleOfConfusion: 0.025 };

describe('hyperfocalDistance', () => {
  it('is 10.05 m for a 50 mm lens at f/10 and a circle of 25 µm', () => {
    expect(hyperfocalDistance(lens)).toBe(10050);
  });

  it('halves but for one focal length when the f-number doubles', () => {
    expect(hyperfocalDistance({ ...lens, fNumber: 20 }) - 50).toBe((hyperfocalDistance(lens) - 50) / 2);
  });

  it('is where the far limit of a symmetric lens goes to infinity', () => {
    const farAt = (distance: number) => {
      const magnification = magnificationOfSubject({ focalLength: 50, subjectDistance: distance });
      return farLimit({ circleOfConfusion: 0.025, entrancePupilDistance: distance, magnification, entrancePupil: 5 });
    };
    expect(farAt(10050.001)).toBe(Infinity);
    expect(farAt(10049.999)).toBeGreaterThan(1e10);
    expect(farAt(10049.999)).toBeLessThan(Infinity);
  });

  it('tends to the focal length as any blur is allowed', () => {
    expect(hyperfocalDistance({ ...lens, circleOfConfusion: 1e12 })).toEqual(
      closeTo(50, { relative: 1e-11, because: 'what is left is f/(N c)' }),
    );
  });

  it('refuses an f-number of zero by name', () => {
    expect(() => hyperfocalDistance({ ...lens, fNumber: 0 })).toThrow(OutOfRange);
    expect(() => hyperfocalDistance({ ...lens, fNumber: 0 })).toThrow(/f-number is 0/);
  });
});
