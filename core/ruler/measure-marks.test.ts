import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { noCombWords } from './find-comb.ts';
import { measureMarks } from './measure-marks.ts';
import type { GreyPhotograph } from './photograph.ts';
import { placesOfMarks } from './places-of-marks.ts';

describe('measureMarks', () => {
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

  it('finds a lean by which a whole mark is passed from the strip’s one side to the other', () => {
    // 39 rows of a quarter of a pixel: their mean shows nothing.
    expect(marksOf(drawn(0.25), 19).lean.value).toEqual(
      closeTo(0.25, { absolute: 0.002, because: 'codes of grey are whole numbers' }),
    );
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

it.each([{ cycles: 0 }, { cycles: Infinity }, { cycles: 1e30 }, { drift: NaN }, { drift: 0.9 }])(
  'has no places for the comb %o',
  (wrong) => {
    expect(() => placesOfMarks({ cycles: 20, drift: 0, phase: 0, ...wrong })).toThrow(/a comb of/);
  },
);
