import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { fitDistances } from './fit-distances.ts';
import { fitLens } from './fit-lens.ts';
import { fitSettings, type LensOfSettings, type SetPhotograph } from './fit-settings.ts';
import { lensFitWords } from './lens-fit.ts';

/** A 50 mm lens with H 22 mm behind its rim. */
function photograph(setting: string, ownMagnification: number, extension: number, off = 0): SetPhotograph {
  const magnification = (ownMagnification + extension / 50) * (1 + off);
  return {
    setting,
    extension,
    sensorWidth: 36,
    fieldWidth: 36 / magnification,
    workingDistance: 50 * (1 + 1 / (ownMagnification + extension / 50)) - 22,
  };
}

function fitted(fit: ReturnType<typeof fitSettings>): LensOfSettings {
  if (fit.outcome !== 'fitted') throw new Error(lensFitWords(fit).join(' '));
  return fit;
}

const rounding = { relative: 1e-9, because: 'rounding' };
const offs = [0.001, -0.002, 0.0015, -0.0005];

describe('fitSettings', () => {
  it('finds one focal length and two settings of a lens that engine and photographs agree on', () => {
    const near = [0, 12, 24].map((e) => photograph('nearest', 0.15, e));
    const far = [12, 36].map((e) => photograph('∞', 0, e));
    const fit = fitted(fitSettings([...near, ...far]));
    expect(fit.focalLength.value).toEqual(closeTo(50, rounding));
    expect(fit.settings.map(({ setting }) => setting)).toEqual(['nearest', '∞']);
    expect(fit.settings[0]!.focusMagnification.value).toEqual(closeTo(0.15, rounding));
    expect(fit.settings[1]!.focusMagnification.value).toEqual(closeTo(0, { absolute: 1e-12, because: 'rounding' }));
    expect(fit.frontPrincipalDepth!.value).toEqual(closeTo(22, rounding));
    expect(fit.degreesOfFreedom).toBe(2);
    expect(fit.spoiler).toBeNull();
  });

  it('says of one setting what fitLens says', () => {
    const photographs = [0, 12, 24, 36].map((e, at) => photograph('', 0.15, e, offs[at]));
    const [one, other] = [fitted(fitSettings(photographs)), fitLens(photographs)];
    if (other.outcome !== 'fitted') throw new Error(other.because);
    expect(one.focalLength.standardError).toEqual(closeTo(other.focalLength.standardError!, rounding));
    expect(one.focalLength.value).toEqual(closeTo(other.focalLength.value, rounding));
    expect(one.settings[0]!.focusMagnification.standardError).toEqual(
      closeTo(other.focusMagnification.standardError!, rounding),
    );
    expect(one.frontPrincipalDepth!.standardError).toEqual(
      closeTo(other.frontPrincipalDepth!.standardError!, rounding),
    );
  });

  it('points at the photograph that spoils it, and says what comes out without it', () => {
    const photographs = [0, 8, 12, 20, 24, 36].map((e, at) =>
      photograph('', 0.15, e, at === 3 ? 0.05 : (offs[at % 4] ?? 0)),
    );
    const fit = fitted(fitSettings(photographs));
    expect(fit.spoiler).toBe(3);
    const without = fitted(fitSettings(photographs.filter((_, at) => at !== 3)));
    expect(fit.photographs[3]!.focalLengthWithout).toEqual(closeTo(without.focalLength.value, rounding));
    expect(without.spoiler).toBeNull();
  });

  it('judges none that nothing else can judge: the only one of its setting', () => {
    const photographs = [0, 12, 24, 36].map((e, at) => photograph('', 0.15, e, offs[at]));
    const fit = fitted(fitSettings([...photographs, photograph('∞', 0, 12, 0.3)]));
    expect(fit.photographs[4]!.studentised).toBeNull();
    expect(fit.photographs[0]!.studentised).not.toBeNull();
  });

  it.each([
    ['no photograph', []],
    ['one photograph', [photograph('', 0.1, 12)]],
    ['one extension', [photograph('a', 0.1, 12), photograph('b', 0.2, 12)]],
  ])('says in words that it cannot tell: %s', (because, photographs) => {
    expect(fitSettings(photographs)).toEqual({ outcome: 'cannot tell', because });
  });

  it('knows a field that widens with rings, and one far past infinity, for no lens', () => {
    expect(fitSettings([photograph('', 0.9, 0), photograph('', 0.1, 12)])).toMatchObject({
      because: 'field does not shrink',
    });
    expect(fitSettings([photograph('', -0.1, 12), photograph('', -0.1, 24)])).toMatchObject({
      because: 'past infinity',
    });
  });
});

describe('fitSettings of photographs that know their own errors', () => {
  const told = (own: number, e: number, share: number, off = 0): SetPhotograph => {
    const one = photograph('', own, e, off);
    return { ...one, fieldWidthError: one.fieldWidth * share };
  };

  it('lets one that is known badly turn the line little, and calls it no spoiler', () => {
    const fit = fitted(fitSettings([...[0, 12, 36].map((e) => told(0.15, e, 1e-4)), told(0.15, 24, 0.02, 0.03)]));
    expect(Math.abs(fit.focalLength.value - 50)).toBeLessThan(0.01);
    expect(fit.photographs[3]!.studentised).toEqual(closeTo(1.5, { absolute: 0.05, because: '3 % of 2 %' }));
    expect(fit.spoiler).toBeNull();
    expect(fit.misfit).toBeGreaterThan(0.5);
  });

  it('names one whose error does not explain it, and is as wide as they scatter', () => {
    const all = [0, 12, 24, 36, 30].map((e, at) => told(0.15, e, 1e-3, at === 3 ? 0.03 : 0));
    const fit = fitted(fitSettings(all));
    expect(fit.spoiler).toBe(3);
    expect(fit.misfit).toBeGreaterThan(5);
    const good = fitted(fitSettings(all.filter((_, at) => at !== 3)));
    expect(good.focalLength.value).toEqual(closeTo(fit.photographs[3]!.focalLengthWithout!, rounding));
    expect(fit.focalLength.standardError).toBeGreaterThan(4 * good.focalLength.standardError!);
  });

  it('names neither of two that are out alike', () => {
    const fit = fitted(fitSettings([0, 12, 24].map((e, at) => told(0.15, e, 1e-4, at === 1 ? 0.03 : 0))));
    expect(Math.abs(fit.photographs[0]!.studentised!)).toBeGreaterThan(10);
    expect(fit.spoiler).toBeNull();
  });

  it('is never surer than reading and rounding leave it, however well photographs agree', () => {
    const fit = fitted(fitSettings([0, 12, 36].map((e) => told(0.15, e, 0))));
    expect(fit.misfit).toEqual(closeTo(0, { absolute: 1e-9, because: 'rounding' }));
    expect(fit.focalLength.standardError! / 50).toBeGreaterThan(1e-4);
    expect(fit.frontPrincipalDepth!.standardError).toBeGreaterThan(0.1);
  });

  it('says errors of two photographs, and takes all alike where one does not say its own', () => {
    const two = [told(0.15, 0, 1e-3), told(0.15, 24, 1e-3)];
    expect(fitted(fitSettings(two)).focalLength.standardError).toBeGreaterThan(0);
    expect(fitted(fitSettings(two)).misfit).toBeNull();
    const mixed = [...two, photograph('', 0.15, 12, 0.001)];
    const bare = mixed.map(({ fieldWidthError: _, ...one }) => one);
    expect(fitSettings(mixed)).toEqual(fitSettings(bare));
    expect(() => fitSettings([two[0]!, { ...two[1]!, fieldWidthError: -1 }])).toThrow(/error of the field width is -1/);
  });
});

describe('fitDistances', () => {
  it('finds the same lens without a ring, from three focus settings', () => {
    const lens = fitDistances([0.05, 0.1, 0.15].map((m) => photograph('', m, 0)))!;
    expect(lens.focalLength.value).toEqual(closeTo(50, rounding));
    expect(lens.frontPrincipalDepth.value).toEqual(closeTo(22, rounding));
    expect(lens.photographs.map(({ place }) => place)).toEqual([0, 1, 2]);
    expect(lens.spoiler).toBeNull();
  });

  it('is as uncertain as its distances: a millimetre off at one end of a line', () => {
    const off = [0.1, 0.15, 0.3].map((m, at) => {
      const one = photograph('', m, 0);
      return { ...one, workingDistance: one.workingDistance! + [1, -1, 0.5][at]! };
    });
    const lens = fitDistances(off)!;
    expect(Math.abs(lens.focalLength.value - 50)).toBeLessThan(2 * lens.focalLength.standardError!);
    expect(lens.frontPrincipalDepth.standardError).toBeGreaterThan(lens.focalLength.standardError!);
  });

  it('points at the distance that spoils it', () => {
    const misread = [0.05, 0.08, 0.1, 0.12, 0.15, 0.2].map((m, at) => {
      const one = photograph('', m, 0);
      return { ...one, workingDistance: one.workingDistance! + (at === 3 ? 20 : (at % 3) - 1) };
    });
    const lens = fitDistances(misread)!;
    expect(lens.spoiler).toBe(3);
    const without = fitDistances(misread.filter((_, at) => at !== 3))!;
    expect(lens.photographs[3]!.focalLengthWithout).toEqual(closeTo(without.focalLength.value, rounding));
  });

  it('leaves open what one magnification, or none, says', () => {
    expect(fitDistances([photograph('', 0.1, 0), photograph('', 0.1, 0)])).toBeNull();
    expect(fitDistances([])).toBeNull();
    expect(fitDistances([{ ...photograph('', 0.1, 0), workingDistance: 10 }, photograph('', 0.2, 0)])).toBeNull();
  });
});
