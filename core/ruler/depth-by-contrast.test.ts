import besselJ1 from '@stdlib/math-base-special-besselj1';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { coneOfLens } from '#core/depth/cone.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { marksAt } from './comb.ts';
import { contrastAlong } from './contrast-along.ts';
import { depthByContrast, noDepthWords, type DepthByContrast, type SlantedMarks } from './depth-by-contrast.ts';
import { measureMarks } from './measure-marks.ts';
import { rulerPicture } from './ruler-picture.ts';
import { offAxisOf, rulerScale } from './ruler-scale.ts';

const camera = { columns: 900, rows: 60, pitch: 0.025 };
const line = { from: { x: 40, y: 30 }, to: { x: 860, y: 30 } };

/** A ruler at 45° before a 50 mm lens of P = 1, rendered, measured, and what its contrast is asked. */
function slanted(fNumber: number, magnification: number): SlantedMarks {
  const cone = coneOfLens({ focalLength: 50, fNumber, pupilMagnification: 1, magnification });
  const photograph = rulerPicture({
    spacing: 1,
    tilt: 45 * degree,
    focus: 1,
    view: {
      ...camera,
      ...cone,
      pupilMagnification: 1,
      entrancePupilDistance: 1 / cone.inverseEntrancePupilDistance,
      electronsAtWhite: 3000,
    },
  });
  const marks = measureMarks(photograph, line, 8);
  if (marks.outcome === 'no comb') throw new Error(marks.because);
  const offAxis = offAxisOf(photograph, line);
  const known = { sensorWidth: 22.5, pixelsAcross: 900, spacing: 1, focalLength: 50 };
  const { magnification: found, tilt } = rulerScale({ ...marks, ...known, offAxis });
  return {
    contrasts: contrastAlong(marks.profile, marks, marks.length),
    axisMark: marksAt(marks, -offAxis / marks.length),
    spacing: 1,
    tilt: tilt!.value,
    magnification: found.value,
    pitch: camera.pitch,
    focalLength: 50,
    fNumber,
    circleOfConfusion: 0.03,
  };
}

function found(given: SlantedMarks): DepthByContrast {
  const depth = depthByContrast(given);
  if (depth.outcome === 'no depth') throw new Error(noDepthWords(depth));
  return depth;
}

describe('depthByContrast', () => {
  it.each([
    [4, 0.5],
    [4, 1],
    [5.6, 0.7],
  ])('finds the cone of f/%f at m = %f by the marks of a rendered ruler, and where it is focused', (fNumber, m) => {
    const depth = found(slanted(fNumber, m));
    expect(depth.effectiveFNumber.value).toEqual(
      closeTo(fNumber * (1 + m), {
        relative: 0.06,
        because: 'a disc without diffraction, slices of the renderer, a lean known to 0.3°',
      }),
    );
    expect(depth.depthOfField.value / depth.expected.depthOfField).toEqual(
      closeTo(1, { absolute: 0.06, because: 'the same' }),
    );
    expect(depth.focus.value).toEqual(closeTo(1, { absolute: 0.3, because: 'a third of a mark' }));
    expect(depth.curve.length).toBeGreaterThan(15);
  });

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
