import besselJ1 from '@stdlib/math-base-special-besselj1';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { depthByContrast, noDepthWords, type DepthByContrast, type SlantedMarks } from './depth-by-contrast.ts';

function found(given: SlantedMarks): DepthByContrast {
  const depth = depthByContrast(given);
  if (depth.outcome === 'no depth') throw new Error(noDepthWords(depth));
  return depth;
}

describe('depthByContrast', () => {
  /** Contrast as the model says it for an effective f-number of 8 at m = 1, focused on the axis. */
  const model: SlantedMarks = {
    contrasts: Array.from({ length: 21 }, (_, at) => ({
      mark: at - 10,
      contrast: 0.4 / (1 + 0.1 * (at - 10) ** 2),
      density: 0.02,
    })),
    axisMark: 0,
    spacing: 1,
    tilt: 0.7,
    magnification: 1,
    pitch: 0.02,
    focalLength: 50,
    fNumber: 4,
    circleOfConfusion: 0.03,
  };

  it('says why contrast tells nothing: a flat ruler, few marks, no top, no fall', () => {
    expect(depthByContrast({ ...model, tilt: 0.05 })).toEqual({ outcome: 'no depth', because: 'flat' });
    expect(depthByContrast({ ...model, contrasts: model.contrasts.slice(0, 5) })).toMatchObject({ because: 'too few' });
    expect(depthByContrast({ ...model, contrasts: model.contrasts.slice(0, 10) })).toMatchObject({ because: 'no top' });
    const even = model.contrasts.map((one) => ({ ...one, contrast: 0.4 - 1e-4 * one.mark ** 2 }));
    expect(depthByContrast({ ...model, contrasts: even })).toMatchObject({ because: 'even' });
    expect(noDepthWords({ outcome: 'no depth', because: 'flat' })).toMatch(/leans too little/);
  });

  it('refuses a lens that is none and a circle of nothing', () => {
    expect(() => depthByContrast({ ...model, fNumber: 0 })).toThrow(OutOfRange);
    expect(() => depthByContrast({ ...model, circleOfConfusion: 0 })).toThrow(OutOfRange);
  });

  interface Known {
    readonly fNumber: number;
    readonly pupilMagnification: number;
    /** How far the sharp plane is behind the axis' place, mm. */
    readonly focus: number;
    readonly noise?: number;
    readonly seed?: number;
  }

  /** Contrast as a disc of blur leaves it on a ruler, the disc by similar triangles at the sharp plane's own cone; f = 50 mm, m = ½ on the axis. */
  function lawful({ fNumber, pupilMagnification, focus, noise = 0, seed = 1 }: Known): SlantedMarks {
    const [focalLength, magnification, tilt, pitch, axisMark] = [50, 0.5, 0.7, 0.02, 1.5];
    const chance = chanceFrom(seed);
    const pupilDistance = focalLength * (1 / magnification + 1 / pupilMagnification);
    const effective = fNumber * (1 + magnification / pupilMagnification);
    const atFocus = (magnification * pupilDistance) / (pupilDistance + focus);
    const contrasts = Array.from({ length: 31 }, (_, index) => {
      const mark = index - 15;
      const off = (mark - axisMark) * Math.sin(tilt) - focus;
      const disc = (atFocus ** 2 * Math.abs(off)) / (effective * (1 + off / (pupilDistance + focus)));
      const density = 0.04;
      const x = (Math.PI * disc * density) / pitch;
      const left = x === 0 ? 1 : Math.abs((2 * besselJ1(x)) / x);
      return { mark, contrast: 0.4 * left + noise * (chance() - 0.5), density };
    });
    const known = { spacing: 1, tilt, magnification, pitch, focalLength, circleOfConfusion: 0.03 };
    return { ...known, contrasts, axisMark, pupilMagnification, fNumber };
  }

  it.each<Known>([
    { fNumber: 4, pupilMagnification: 1, focus: 0 },
    { fNumber: 5.6, pupilMagnification: 0.5, focus: 1.7 },
    { fNumber: 2.8, pupilMagnification: 2, focus: -2.3 },
  ])('finds the cone that made the contrast, where it is focused and its depth: %o', (known) => {
    const given = lawful(known);
    const depth = found(given);
    const effective = known.fNumber * (1 + 0.5 / known.pupilMagnification);
    const exact = { relative: 2e-3, because: 'sixteen halvings of the range tried' };
    expect(depth.effectiveFNumber.value).toEqual(closeTo(effective, exact));
    expect(depth.expected.effectiveFNumber).toEqual(closeTo(effective, { relative: 1e-12, because: 'rounding' }));
    expect(depth.focus.value).toEqual(closeTo(known.focus, { absolute: 2e-3, because: 'the same' }));
    // By hand, from where the disc is as wide as c: m² δ = c N_w (1 ± δ/u), with m and u at the sharp plane.
    const pupilDistance = 50 * (2 + 1 / known.pupilMagnification) + known.focus;
    const m = (0.5 * (pupilDistance - known.focus)) / pupilDistance;
    const blur = 0.03 * effective;
    const total = blur / (m ** 2 - blur / pupilDistance) + blur / (m ** 2 + blur / pupilDistance);
    expect(depth.depthOfField.value).toEqual(closeTo(total, exact));
    expect(depth.expected.depthOfField).toEqual(closeTo(total, exact));
    expect(depth.curve.map(({ measured }) => measured)).toEqual(given.contrasts.map(({ contrast }) => contrast));
    depth.curve.forEach(({ depth: at, measured, modelled }, index) => {
      expect(at).toEqual(closeTo((index - 16.5) * Math.sin(0.7), { absolute: 1e-12, because: 'rounding' }));
      expect(modelled).toEqual(closeTo(measured, { absolute: 1e-3, because: 'as above' }));
    });
    expect(depth.focus.standardError).toBeLessThan(0.01);
    expect(depth.effectiveFNumber.standardError).toBeLessThan(0.01 * effective);
  });

  it('knows marks half as far apart, twice as many, for the same ruler', () => {
    const given = lawful({ fNumber: 4, pupilMagnification: 1, focus: 1 });
    const wide = given.contrasts.map((one) => ({ ...one, mark: one.mark / 2 }));
    const apart = found({ ...given, contrasts: wide, axisMark: given.axisMark / 2, spacing: 2 });
    expect(apart.depthOfField.value).toEqual(
      closeTo(found(given).depthOfField.value, { relative: 1e-9, because: 'rounding' }),
    );
  });

  it('is the same for a line drawn the other way', () => {
    const given = lawful({ fNumber: 4, pupilMagnification: 1, focus: 1 });
    const turned = given.contrasts.map((one) => ({ ...one, mark: -one.mark })).reverse();
    const back = found({ ...given, contrasts: turned, axisMark: -given.axisMark, tilt: -given.tilt });
    const there = found(given);
    const same = { relative: 1e-6, because: 'rounding' };
    expect(back.focus.value).toEqual(closeTo(there.focus.value, same));
    expect(back.depthOfField.value).toEqual(closeTo(there.depthOfField.value, same));
  });

  it('is as far off as it says, in its focus and in its cone', () => {
    let [focus, fNumber] = [0, 0];
    const seeds = 12;
    for (let seed = 0; seed < seeds; seed++) {
      const depth = found(lawful({ fNumber: 4, pupilMagnification: 1, focus: 1, noise: 0.04, seed }));
      focus += ((depth.focus.value - 1) / depth.focus.standardError!) ** 2 / seeds;
      fNumber += ((depth.effectiveFNumber.value - 6) / depth.effectiveFNumber.standardError!) ** 2 / seeds;
      expect(depth.depthOfField.standardError! / depth.depthOfField.value).toEqual(
        closeTo(depth.effectiveFNumber.standardError! / depth.effectiveFNumber.value, {
          relative: 1e-9,
          because: 'T goes with N_w',
        }),
      );
    }
    // A mean of twelve squares is known to two fifths.
    for (const ratio of [focus, fNumber]) {
      expect(ratio).toBeGreaterThan(0.3);
      expect(ratio).toBeLessThan(2.4);
    }
  });

  it('takes eight marks, and a top anywhere but at one of the ends', () => {
    const given = lawful({ fNumber: 1.4, pupilMagnification: 1, focus: 0 });
    expect(depthByContrast({ ...given, contrasts: given.contrasts.slice(0, 7) })).toMatchObject({ because: 'too few' });
    expect(depthByContrast({ ...given, contrasts: given.contrasts.slice(12, 20) })).toMatchObject({ outcome: 'depth' });
    expect(depthByContrast({ ...given, contrasts: given.contrasts.slice(17) })).toMatchObject({ because: 'no top' });
    expect(depthByContrast({ ...given, contrasts: given.contrasts.slice(0, 16) })).toMatchObject({ because: 'no top' });
  });
});
