import { describe, expect, it } from 'vitest';
import { coneOfLens } from '#core/depth/cone.ts';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { marksAt } from './comb.ts';
import { contrastAlong } from './contrast-along.ts';
import { depthByContrast, noDepthWords, type SlantedMarks } from './depth-by-contrast.ts';
import { noCombWords } from './find-comb.ts';
import { measureMarks } from './measure-marks.ts';
import { placesOfMarks } from './places-of-marks.ts';
import { rulerPicture } from './ruler-picture.ts';
import { offAxisOf, rulerScale } from './ruler-scale.ts';

const camera = { columns: 900, rows: 60, pitch: 0.025 };
const line = { from: { x: 63, y: 31.2 }, to: { x: 851, y: 29.3 } };

interface Taken {
  readonly magnification: number;
  /** In degrees. */
  readonly tilt?: number;
  readonly turn?: number;
  readonly fNumber?: number;
  readonly focus?: number;
  readonly electrons?: number;
  readonly seed?: number;
}

/** A ruler with a mark a millimetre before a 50 mm lens of P = 1, and what the line says of it. */
function taken(
  { magnification, tilt = 0, turn = 0.01, fNumber = 8, focus = 0, electrons = 800, seed = 1 }: Taken,
  reach = 4,
) {
  const cone = coneOfLens({ focalLength: 50, fNumber, pupilMagnification: 1, magnification });
  const entrancePupilDistance = 1 / cone.inverseEntrancePupilDistance;
  const photograph = rulerPicture({
    spacing: 1,
    tilt: tilt * degree,
    turn,
    focus,
    view: {
      ...camera,
      ...cone,
      pupilMagnification: 1,
      entrancePupilDistance,
      electronsAtWhite: electrons,
      readNoise: 5,
      seed,
    },
  });
  const marks = measureMarks(photograph, line, reach);
  if (marks.outcome === 'no comb') throw new Error(noCombWords(marks));
  const scale = rulerScale({
    ...marks,
    offAxis: offAxisOf(photograph, line),
    spacing: 1,
    sensorWidth: camera.columns * camera.pitch,
    pixelsAcross: camera.columns,
    focalLength: 50,
  });
  // The sharp plane is `focus` behind the ruler's middle, which is seen so much larger.
  const truth = (magnification * entrancePupilDistance) / (entrancePupilDistance - focus);
  return { marks, scale, truth };
}

const asked = { relative: 1e-3, because: 'a tenth of a per cent is what a photographer can use' };

describe('measureMarks', () => {
  it.each<[string, Taken]>([
    ['flat and sharp, ten pixels a mark', { magnification: 0.25 }],
    ['five pixels a mark', { magnification: 0.125 }],
    ['leaning back by 5°', { magnification: 0.25, tilt: 5 }],
    ['leaning forward by 5°, turned by 2°, wide open', { magnification: 0.25, tilt: -5, turn: 0.035, fNumber: 2.8 }],
    ['in much noise', { magnification: 0.25, tilt: 5, electrons: 40 }],
    ['out of focus by 12 mm', { magnification: 0.25, tilt: 5, fNumber: 2.8, focus: 12 }],
    ['forty pixels a mark', { magnification: 1, tilt: 3 }],
  ])('finds the magnification of a ruler within 0.1 %%: %s', (_, how) => {
    const { scale, truth } = taken(how);
    expect(scale.magnification.value).toEqual(closeTo(truth, asked));
    expect(scale.tilt!.value / degree).toEqual(closeTo(how.tilt ?? 0, { absolute: 0.15, because: 'of 5°, as asked' }));
  });

  it('finds it along a ruler that leans by 45°, most of which is soft', () => {
    const { scale, truth } = taken({ magnification: 0.5, tilt: 45, fNumber: 4, focus: 1 }, 10);
    expect(scale.magnification.value).toEqual(
      closeTo(truth, { relative: 0.006, because: 'its cosine changes by 1 % in ½°' }),
    );
    expect(scale.tilt!.value / degree).toEqual(closeTo(45, { absolute: 0.5, because: 'few marks are sharp' }));
  });

  it('states an error that is met as often as an error should be', () => {
    const errors = Array.from({ length: 16 }, (_, seed) => {
      const { scale, truth } = taken({
        magnification: 0.25,
        electrons: 60,
        seed,
        turn: (seed - 8) * 0.002,
        tilt: (seed % 5) - 2,
      });
      return (scale.magnification.value - truth) / scale.magnification.standardError!;
    });
    const spread = Math.sqrt(errors.reduce((sum, one) => sum + one * one, 0) / errors.length);
    // 1 for perfect errors; pixels' own grid, the brushed metal and figures add what noise does not know.
    expect(spread).toBeGreaterThan(0.5);
    expect(spread).toBeLessThan(2.5);
  });

  it('follows marks that lean against the line, and says how much', () => {
    const { marks } = taken({ magnification: 0.25, turn: 0.06 });
    // The line itself falls by 1.9 pixels over 788.
    expect(marks.lean.value).toEqual(closeTo(-0.06 - 1.9 / 788, { absolute: 0.004, because: 'nine rows of pixels' }));
  });

  it('puts its marks where the ruler has them', () => {
    const { marks } = taken({ magnification: 0.25, turn: 0 });
    const places = placesOfMarks(marks).map((place) => 63 + place * 788);
    // Zero is in the middle of the picture, at 450, and marks are ten pixels apart.
    const nearest = places.reduce((best, one) => (Math.abs(one - 450) < Math.abs(best - 450) ? one : best));
    expect(nearest).toEqual(closeTo(450, { absolute: 0.3, because: 'a third of a pixel is not seen' }));
    expect(places).toHaveLength(79);
    expect(Math.min(...places)).toBeGreaterThan(69);
    expect(Math.max(...places)).toBeLessThan(851);
  });
});

const level = { from: { x: 40, y: 30 }, to: { x: 860, y: 30 } };

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
  const marks = measureMarks(photograph, level, 8);
  if (marks.outcome === 'no comb') throw new Error(marks.because);
  const offAxis = offAxisOf(photograph, level);
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

describe('depthByContrast', () => {
  it.each([
    [4, 0.5],
    [4, 1],
    [5.6, 0.7],
  ])('finds the cone of f/%f at m = %f by the marks of a rendered ruler, and where it is focused', (fNumber, m) => {
    const depth = depthByContrast(slanted(fNumber, m));
    if (depth.outcome === 'no depth') throw new Error(noDepthWords(depth));
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
});
