import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { fitLens } from './fit-lens.ts';
import { lensFitWords, type FittedLens, type LensFit } from './lens-fit.ts';
import { FaultyPhotograph, type RulerPhotograph } from './photograph.ts';

/** What the engine says a ruler photograph of the 50 mm lens, set to 0.1, would show. */
function photograph(extension: number, measure = true): RulerPhotograph {
  const solved = solveRig(assembleRig([camera, ring(extension), on(lens50, { at: 0.1 })]));
  if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
  const { fieldWidth, workingDistance } = solved;
  return { fieldWidth, sensorWidth: 36, extension, ...(measure ? { workingDistance } : {}) };
}

function fitted(fit: LensFit): FittedLens {
  if (fit.outcome !== 'fitted') throw new Error(fit.because);
  return fit;
}

const rounding = { relative: 1e-12, because: 'rounding' };
const nothing = { absolute: 1e-10, because: 'rounding' };

describe('fitLens', () => {
  it('finds focal length, focus magnification and depth of H of the lens that the engine photographed', () => {
    const fit = fitted(fitLens([0, 12, 24, 36].map((extension) => photograph(extension))));
    expect(fit.focalLength.value).toEqual(closeTo(50, rounding));
    expect(fit.focusMagnification.value).toEqual(closeTo(0.1, rounding));
    expect(fit.frontPrincipalDepth?.value).toEqual(closeTo(22, { relative: 1e-11, because: 'a small difference' }));
    expect(fit.focalLength.standardError).toEqual(closeTo(0, nothing));
    expect(fit.frontPrincipalDepth?.standardError).toEqual(closeTo(0, nothing));
    for (const { magnification, fieldWidth, workingDistance } of fit.residuals) {
      expect([magnification, fieldWidth, workingDistance]).toEqual([0, 0, 0].map(() => closeTo(0, nothing)));
    }
  });

  it('shows in the residual which photograph was misread', () => {
    const photographs = [0, 12, 24, 36].map((extension) => photograph(extension));
    const misread = photographs.map((one, index) =>
      index === 2 ? { ...one, fieldWidth: one.fieldWidth * 1.05 } : one,
    );
    const sizes = fitted(fitLens(misread)).residuals.map(({ magnification }) => Math.abs(magnification));
    expect(sizes.indexOf(Math.max(...sizes))).toBe(2);
  });

  it('measures a badly placed rim without spoiling the focal length', () => {
    const photographs = [0, 12, 36].map((extension) => photograph(extension));
    const off = photographs.map((one, index) => ({
      ...one,
      workingDistance: one.workingDistance! + [2, -1, -1][index]!,
    }));
    const fit = fitted(fitLens(off));
    expect(fit.focalLength.value).toEqual(closeTo(50, rounding));
    expect(fit.frontPrincipalDepth?.value).toEqual(closeTo(22, rounding));
    expect(fit.frontPrincipalDepth?.standardError).toEqual(closeTo(1, rounding));
    expect(fit.residuals.map(({ workingDistance }) => workingDistance)).toEqual(
      [2, -1, -1].map((x) => closeTo(x, nothing)),
    );
  });

  it('needs one ring alone where the lens is known to be set to infinity', () => {
    const fit = fitted(fitLens([{ fieldWidth: 72, sensorWidth: 36, extension: 25 }], { focusMagnification: 0 }));
    expect(fit.focalLength).toEqual({ value: 50, standardError: null });
    expect(fit.focusMagnification).toEqual({ value: 0, standardError: null });
  });

  it('states an error from two photographs only if told how well they were read', () => {
    const two = [photograph(0), photograph(36)];
    expect(fitted(fitLens(two)).focalLength.standardError).toBeNull();
    expect(lensFitWords(fitLens(two)).join(' ')).toMatch(/one more photograph/);
    const told = fitted(fitLens(two, { readTo: { fieldWidth: 0.5, workingDistance: 1 } }));
    expect(told.focalLength.standardError).toBeGreaterThan(0);
    expect(told.frontPrincipalDepth?.standardError).toBeGreaterThan(Math.SQRT1_2);
    expect(told.misfit).toBeNull();
  });

  it('is twice as uncertain when the ruler is read half as well', () => {
    const three = [0, 12, 36].map((extension) => photograph(extension));
    const error = (fieldWidth: number) =>
      fitted(fitLens(three, { readTo: { fieldWidth, workingDistance: 1 } })).focalLength.standardError;
    expect(error(0.4)).toEqual(closeTo(2 * error(0.2)!, rounding));
  });

  it.each([
    ['no photograph', [], {}, /no photograph/],
    ['one photograph', [photograph(12)], {}, /two unknowns/],
    ['one extension', [photograph(12), photograph(12), photograph(12)], {}, /same extension/],
    ['no ring', [photograph(0)], { focusMagnification: 0.1 }, /No photograph has a ring/],
  ])('says in words that it cannot tell: %s', (because, photographs, options, words) => {
    const fit = fitLens(photographs, options);
    expect(fit).toEqual({ outcome: 'cannot tell', because });
    expect(lensFitWords(fit)[0]).toMatch(words);
  });

  it('says in words that a field which widens with extension is no lens', () => {
    const fit = fitLens([photograph(36), { ...photograph(0), extension: 50 }]);
    expect(fit).toEqual({ outcome: 'contradictory', because: 'field does not shrink' });
    expect(lensFitWords(fit)[0]).toMatch(/No lens does that/);
  });

  it('says in words that it cannot tell where readings scatter as much as the rings change them', () => {
    const scattered = [200, 190, 215, 185].map((fieldWidth, place) => ({
      fieldWidth,
      sensorWidth: 36,
      extension: 12 + 2 * place,
    }));
    const fit = fitLens(scattered);
    expect(fit).toEqual({ outcome: 'cannot tell', because: 'too uncertain' });
    expect(lensFitWords(fit)[0]).toMatch(/stay open/);
    // Read as well as that, the same would tell: errors said beforehand count, not those that happened.
    expect(fitLens(scattered, { readTo: { fieldWidth: 0.5, workingDistance: 1 } }).outcome).toBe('fitted');
  });

  it('says in words that a lens far past infinity is no lens', () => {
    // A ring of 12 mm misread as all but another of the same length.
    const fit = fitLens([photograph(12), { ...photograph(15), extension: 12.0001 }]);
    expect(fit).toEqual({ outcome: 'contradictory', because: 'past infinity' });
    expect(lensFitWords(fit)[0]).toMatch(/past infinity/);
  });

  it('leaves the depth of H open where no working distance was measured, and its error where one was', () => {
    const none = fitLens([0, 12, 24].map((extension) => photograph(extension, false)));
    expect(fitted(none).frontPrincipalDepth).toBeNull();
    expect(fitted(none).residuals[0]?.workingDistance).toBeNull();
    expect(lensFitWords(none).join(' ')).toMatch(/No working distance was measured/);
    const one = fitLens([photograph(0), photograph(12, false), photograph(24, false)]);
    expect(fitted(one).frontPrincipalDepth?.standardError).toBeNull();
    expect(lensFitWords(one).join(' ')).toMatch(/One more working distance/);
    expect(lensFitWords(fitLens([0, 12, 24].map((extension) => photograph(extension))))).toHaveLength(1);
  });

  const good = photograph(12);
  it.each([
    [{ ...good, fieldWidth: 0 }, /photograph 1: the field width is 0/],
    [{ ...good, fieldWidth: NaN }, /the field width is NaN/],
    [{ ...good, sensorWidth: -36 }, /the sensor width is -36/],
    [{ ...good, extension: -1 }, /the extension is -1/],
    [{ ...good, extension: Infinity }, /the extension is Infinity/],
    [{ ...good, workingDistance: 0 }, /the working distance is 0/],
    [{ ...good, fieldWidth: 1e-9 }, /a magnification of/],
    [{ sensorWidth: 36, extension: 12 } as RulerPhotograph, /the field width is undefined/],
  ])('refuses a photograph that cannot be, by its place: %#', (bad, words) => {
    expect(() => fitLens([photograph(0), bad])).toThrow(FaultyPhotograph);
    expect(() => fitLens([photograph(0), bad])).toThrow(words);
  });

  it('refuses a reading error of nothing and a focus magnification that is none', () => {
    expect(() => fitLens([good], { readTo: { fieldWidth: 0, workingDistance: 1 } })).toThrow(OutOfRange);
    expect(() => fitLens([good], { readTo: { fieldWidth: 1, workingDistance: NaN } })).toThrow(OutOfRange);
    expect(() => fitLens([good], { focusMagnification: NaN })).toThrow(OutOfRange);
  });
});
