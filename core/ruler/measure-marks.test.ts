import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { coneOfLens } from '#core/depth/cone.ts';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { noCombWords } from './find-comb.ts';
import { measureMarks } from './measure-marks.ts';
import type { GreyPhotograph } from './photograph.ts';
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

  it('says in words that it finds none beside the ruler, on a line too short, and on an even ground', () => {
    const photograph = { columns: 400, rows: 100, grey: new Uint8Array(40000).fill(128) };
    const along = { from: { x: 10, y: 50 }, to: { x: 390, y: 50 } };
    expect(measureMarks(photograph, along, 3)).toEqual({ outcome: 'no comb', because: 'even' });
    expect(measureMarks(photograph, { ...along, to: { x: 20, y: 50 } }, 3)).toEqual({
      outcome: 'no comb',
      because: 'too short',
    });
    expect(() => measureMarks(photograph, { ...along, to: { x: 500, y: 50 } }, 3)).toThrow(
      /accepted: a place in the photograph/,
    );
    expect(() => measureMarks({ ...photograph, rows: 99 }, along, 3)).toThrow(/has 40000 of them/);
  });

  /** Marks drawn by a formula, *spacing* pixels apart and square to a line that leans by *lean*, with noise of some codes. */
  function drawn(lean: number, noise = 0, seed = 1): GreyPhotograph {
    const [columns, rows, spacing] = [500, 41, 9.5];
    const chance = chanceFrom(seed);
    const grey = Uint8Array.from({ length: columns * rows }, (_, at) => {
      const [x, y] = [(at % columns) + 0.5, Math.floor(at / columns) + 0.5];
      const along = x * Math.cos(lean) - y * Math.sin(lean);
      return 130 + 70 * Math.cos((2 * Math.PI * along) / spacing) + noise * (chance() - 0.5);
    });
    return { columns, rows, grey };
  }
  const across = { from: { x: 10, y: 20 }, to: { x: 490, y: 20 } };

  function marksOf(photograph: GreyPhotograph, reach: number) {
    const marks = measureMarks(photograph, across, reach);
    if (marks.outcome === 'no comb') throw new Error(noCombWords(marks));
    return marks;
  }

  it.each([-0.25, -0.06, 0, 0.11, 0.25])('finds how marks lean on both sides: %f', (lean) => {
    const marks = marksOf(drawn(lean), 12);
    expect(marks.lean.value).toEqual(closeTo(lean, { absolute: 0.002, because: 'codes of grey are whole numbers' }));
    expect(marks.lean.standardError).toBeLessThan(0.002);
    expect(marks.cycles).toEqual(closeTo((480 * Math.cos(lean)) / 9.5, { relative: 1e-3, because: 'the same' }));
    expect(marks.length).toBe(480);
    expect(marks.profile).toHaveLength(481);
  });

  it('is as far off in the lean as it says', () => {
    const squares = Array.from({ length: 12 }, (_, seed) => {
      const { value, standardError } = marksOf(drawn(0.1, 200, seed), 9).lean;
      return ((value - 0.1) / standardError) ** 2 / 12;
    }).reduce((sum, one) => sum + one, 0);
    // A mean of twelve squares is known to two fifths.
    expect(squares).toBeGreaterThan(0.3);
    expect(squares).toBeLessThan(2.4);
  });

  it('knows nothing of a lean from the line alone', () => {
    expect(marksOf(drawn(0), 0).lean).toEqual({ value: 0, standardError: 0 });
  });
});
