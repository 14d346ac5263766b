import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { bestFNumber, worstContrast, type DepthAtFrequency } from './best-f-number.ts';
import { contrast } from './contrast.formula.ts';
import { opticalTransfer } from './optical-transfer.ts';

/** At life size with equal pupils, seen from so far away that both sides of the plane are alike. */
const twoMillimetres: DepthAtFrequency = {
  subjectDepth: 2,
  coneAt: (fNumber) => ({ magnification: 1, effectiveFNumber: 2 * fNumber, inverseEntrancePupilDistance: 0 }),
  wavelength: 0.00055,
  spatialFrequency: 25,
};
const worst = (given: DepthAtFrequency, fNumber: number) => worstContrast(given, fNumber).contrast;
const marked = [2.8, 4, 5.6, 8, 11, 16, 22, 32];

describe('bestFNumber', () => {
  it('marks f/16 for 2 mm of depth at life size and 25 line pairs per millimetre, and leaves 36 %', () => {
    const contrastLeft = closeTo(0.3628, { absolute: 5e-5, because: 'four figures' });
    expect(bestFNumber(twoMillimetres, marked)).toEqual({ fNumber: 16, contrast: contrastLeft, planeDepth: 1 });
  });

  it('is the largest of the worst contrasts', () => {
    const worsts = marked.map((fNumber) => worst(twoMillimetres, fNumber));
    expect(bestFNumber(twoMillimetres, marked)?.contrast).toBe(Math.max(...worsts));
  });

  it('opens up for a shallower subject', () => {
    expect(bestFNumber({ ...twoMillimetres, subjectDepth: 0.1 }, marked)?.fNumber).toBeLessThan(6);
  });

  it('stops down for a lens with spherical aberration', () => {
    const shallow = { ...twoMillimetres, subjectDepth: 0.05, spatialFrequency: 100 };
    const perfect = bestFNumber(shallow, marked)?.fNumber ?? NaN;
    const aberrated = { ...shallow, wideOpen: { sphericalAberration: 6, maxAperture: 2.8 } };
    expect(bestFNumber(aberrated, marked)?.fNumber).toBeGreaterThan(perfect);
  });

  it('has no answer where every f-number loses the pattern somewhere', () => {
    expect(bestFNumber({ ...twoMillimetres, subjectDepth: 200, spatialFrequency: 60 }, marked)).toBeNull();
    expect(bestFNumber({ ...twoMillimetres, spatialFrequency: 1000 }, marked)).toBeNull();
    expect(bestFNumber(twoMillimetres, [])).toBeNull();
  });

  it('does not change when the same subject is seen from before or from behind', () => {
    const seenFrom = (inverseEntrancePupilDistance: number) =>
      bestFNumber(
        {
          ...twoMillimetres,
          subjectDepth: 8,
          coneAt: (fNumber) => ({ ...twoMillimetres.coneAt(fNumber), inverseEntrancePupilDistance }),
        },
        [22, 32, 45],
      );
    const [before, behind] = [seenFrom(0.05), seenFrom(-0.05)];
    const mirrored = closeTo(8 - (behind?.planeDepth ?? NaN), { absolute: 1e-12, because: 'rounding' });
    expect(before).toEqual({ ...behind, planeDepth: mirrored });
    expect(before?.planeDepth).toBeLessThan(4);
  });

  it('stands where it is told, and loses by it', () => {
    const deep = {
      ...twoMillimetres,
      coneAt: (fNumber: number) => ({ ...twoMillimetres.coneAt(fNumber), inverseEntrancePupilDistance: 0.2 }),
    };
    const free = worstContrast(deep, 16);
    const middle = worstContrast({ ...deep, planeDepth: 1 }, 16);
    expect(middle.planeDepth).toBe(1);
    expect(middle.contrast).toBeLessThan(free.contrast - 0.01);
    expect(worst({ ...deep, planeDepth: free.planeDepth }, 16)).toEqual(
      closeTo(free.contrast, { absolute: 1e-9, because: 'the same ends by way of the blur' }),
    );
  });

  it('refuses a sharp plane outside the subject, and a subject that reaches the pupil', () => {
    expect(() => worstContrast({ ...twoMillimetres, planeDepth: 2.1 }, 16)).toThrow(/from 0 to 2 mm/);
    expect(() => worstContrast({ ...twoMillimetres, planeDepth: -0.1 }, 16)).toThrow(OutOfRange);
    const atPupil = {
      ...twoMillimetres,
      coneAt: () => ({ magnification: 1, effectiveFNumber: 32, inverseEntrancePupilDistance: 1 }),
    };
    expect(() => worstContrast({ ...atPupil, planeDepth: 1.5 }, 16)).toThrow(/entrance-pupil-distance is 1/);
    const behind = { ...atPupil, coneAt: () => ({ ...atPupil.coneAt(), inverseEntrancePupilDistance: -1 }) };
    expect(worst({ ...behind, planeDepth: 0.5 }, 16)).toBe(0);
  });

  it('refuses a depth of zero, and an f-number that the lens does not have, by name', () => {
    expect(() => bestFNumber({ ...twoMillimetres, subjectDepth: 0 }, marked)).toThrow(OutOfRange);
    const slow = { ...twoMillimetres, wideOpen: { sphericalAberration: 1, maxAperture: 4 } };
    expect(() => bestFNumber(slow, marked)).toThrow(/f-number is 2.8/);
  });
});

describe('worstContrast', () => {
  it('is that of the ends for a subject barely too deep', () => {
    // f/11 works like f/22: W₀₂₀ at the ends is m² Z/(16 λ N_w²).
    const ends = opticalTransfer({
      spatialFrequency: 25,
      cutoffFrequency: 1 / (0.00055 * 22),
      sphericalAberration: 0,
      defocusAberration: 2 / (16 * 0.00055 * 22 ** 2),
    });
    expect(worst(twoMillimetres, 11)).toEqual(closeTo(ends, { relative: 1e-12, because: 'rounding' }));
  });

  it('counts a pattern reversed inside the depth as lost, even where the ends show it right way round', () => {
    // Some two waves out at the ends, which a pattern at a fifth of the cutoff shows right way round, and reversed on the way there.
    const deep = {
      ...twoMillimetres,
      subjectDepth: 2.1 * 16 * 0.00055 * 16 ** 2,
      spatialFrequency: 0.2 / (0.00055 * 16),
    };
    const transfer = (defocusAberration: number) =>
      opticalTransfer({ spatialFrequency: 0.2, cutoffFrequency: 1, sphericalAberration: 0, defocusAberration });
    expect(transfer(2.1)).toBeGreaterThan(0.04);
    expect(transfer(1.3)).toBeLessThan(-0.08);
    expect(worst(deep, 8)).toBe(0);
  });

  it('tends to the contrast in focus as the subject becomes flat', () => {
    const flat = worst({ ...twoMillimetres, subjectDepth: 1e-9 }, 8);
    const inFocus = contrast({ spatialFrequency: 25, cutoffFrequency: 1 / (0.00055 * 16) });
    expect(flat).toEqual(closeTo(inFocus, { absolute: 1e-7, because: 'accuracy of the transfer' }));
  });
});
