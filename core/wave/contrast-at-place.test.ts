import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { worstContrast } from './best-f-number.ts';
import { contrast } from './contrast.formula.ts';
import { contrastAtPlace, type PlaceInDepth } from './contrast-at-place.ts';

const subject: PlaceInDepth = {
  subjectDepth: 2,
  wavelength: 0.00055,
  spatialFrequency: 25,
  planeDepth: 1,
  placeDepth: 1,
  coneAt: (fNumber) => ({ magnification: 1, effectiveFNumber: 2 * fNumber, inverseEntrancePupilDistance: 0 }),
};
const at = (placeDepth: number, fNumber: number, other: Partial<PlaceInDepth> = {}) =>
  contrastAtPlace({ ...subject, placeDepth, ...other }, fNumber);

describe('contrastAtPlace', () => {
  it('is 46 % in the sharp plane at an effective f/32, as of a perfect lens', () => {
    const perfect = contrast({ spatialFrequency: 25, cutoffFrequency: 1 / (0.00055 * 32) });
    expect(at(1, 16)).toEqual(closeTo(perfect, { absolute: 1e-7, because: 'fineness of the integral' }));
    expect(perfect).toBeCloseTo(0.4584, 4);
  });

  it('is nowhere less than the worst, and somewhere that', () => {
    for (const fNumber of [8, 11, 16, 22]) {
      const places = Array.from({ length: 401 }, (_, step) => at(step / 200, fNumber));
      const { contrast: worst } = worstContrast(subject, fNumber);
      expect(Math.min(...places)).toEqual(closeTo(worst, { absolute: 2e-3, because: 'places 5 µm apart' }));
    }
  });

  it('is alike on both sides for a perfect lens, and not for one with spherical aberration', () => {
    expect(at(0.2, 11)).toBeCloseTo(at(1.8, 11), 12);
    const wideOpen = { sphericalAberration: 1, maxAperture: 8 };
    expect(Math.abs(at(0.7, 9, { wideOpen }) - at(1.3, 9, { wideOpen }))).toBeGreaterThan(0.01);
  });

  it('is nothing where the pattern is reversed, from the cutoff on, and at the entrance pupil', () => {
    expect(at(0, 5.6)).toBe(0);
    expect(at(1, 64)).toBe(0);
    const near = { coneAt: () => ({ magnification: 1, effectiveFNumber: 32, inverseEntrancePupilDistance: 1 }) };
    expect(at(0, 16, near)).toBe(0);
  });

  it('goes over into geometry where light is hundreds of waves out of step', () => {
    const coarse = { spatialFrequency: 0.4, subjectDepth: 200, planeDepth: 100 };
    // 3.551 waves a millimetre: 200 are 56.3 mm off the plane.
    const [waves, geometry] = [43.8, 43.6].map((placeDepth) => at(placeDepth, 4, coarse));
    expect(geometry).toEqual(closeTo(waves!, { absolute: 2e-3, because: '0.2 mm apart, of a slow fall' }));
    expect(geometry).toBeGreaterThan(0.02);
    expect(at(0, 0.6, { ...coarse, subjectDepth: 1e5, planeDepth: 5e4 })).toBeLessThan(0.01);
  });

  it('refuses a place outside the subject, and an f-number wider than the lens opens', () => {
    expect(() => at(2.1, 8)).toThrow(OutOfRange);
    expect(() => at(1, 2, { wideOpen: { sphericalAberration: 0, maxAperture: 2.8 } })).toThrow(/f-number is 2/);
  });
});
