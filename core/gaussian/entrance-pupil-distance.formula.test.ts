import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { subjectDistance } from './subject-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { entrancePupilDistance } from './entrance-pupil-distance.formula.ts';

describe('entrancePupilDistance', () => {
  it('is 150 mm for a symmetric 50 mm lens at half life size', () => {
    expect(entrancePupilDistance({ focalLength: 50, magnification: 0.5, pupilMagnification: 1 })).toBe(150);
  });

  it('is the subject distance where the pupils lie in the principal planes, and there only', () => {
    const lens = { focalLength: 60, magnification: 0.8 };
    expect(entrancePupilDistance({ ...lens, pupilMagnification: 1 })).toBe(subjectDistance(lens));
    expect(entrancePupilDistance({ ...lens, pupilMagnification: 0.6 })).toBeGreaterThan(subjectDistance(lens));
    expect(entrancePupilDistance({ ...lens, pupilMagnification: 1.5 })).toBeLessThan(subjectDistance(lens));
  });

  it('tends to f/P as magnification grows', () => {
    const strong = entrancePupilDistance({ focalLength: 50, magnification: 1e9, pupilMagnification: 0.5 });
    expect(strong).toEqual(closeTo(100, { relative: 1e-9, because: 'the limit is approached as P/m' }));
  });

  it('refuses a pupil magnification of zero by name', () => {
    const flat = { focalLength: 50, magnification: 1, pupilMagnification: 0 };
    expect(() => entrancePupilDistance(flat)).toThrow(OutOfRange);
    expect(() => entrancePupilDistance(flat)).toThrow(/pupil-magnification is 0/);
  });
});
