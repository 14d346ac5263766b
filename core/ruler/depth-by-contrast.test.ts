import { describe, expect, it } from 'vitest';
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
});
