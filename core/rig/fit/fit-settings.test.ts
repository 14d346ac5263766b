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
