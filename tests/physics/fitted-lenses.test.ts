import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { fitLens } from '#core/rig/fit/fit-lens.ts';
import type { FittedLens } from '#core/rig/fit/lens-fit.ts';
import type { RulerPhotograph } from '#core/rig/fit/photograph.ts';
import { closeTo } from '#tests/support/close-to.ts';

/** Measured from so far behind the rim that no working distance is negative. */
const hood = 1000;

interface MadeUp {
  f: number;
  m0: number;
  h: number;
  rings: readonly number[];
}

const made: fc.Arbitrary<MadeUp> = fc.record({
  f: fc.double({ min: 24, max: 180, noNaN: true }),
  m0: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
  h: fc.double({ min: -10, max: 60, noNaN: true }),
  rings: fc.uniqueArray(fc.integer({ min: 0, max: 40 }), { minLength: 3, maxLength: 7 }).filter((all) => {
    return Math.max(...all) - Math.min(...all) > 10;
  }),
});
/** Evenly from above 0 to 1, the same every time: property-test arbitraries favour the ends of their ranges. */
function evenNumbers(seed: number): () => number {
  const chance = chanceFrom(seed);
  return () => 1 - chance();
}

/** Photographs of a made-up lens, each number off by so many of its standard errors. */
function photographs({ f, m0, h, rings }: MadeUp, off: (index: number) => number, readTo: Errors): RulerPhotograph[] {
  return rings.map((extension, index) => {
    const m = m0 + extension / f;
    return {
      sensorWidth: 36,
      extension,
      fieldWidth: 36 / m + readTo.fieldWidth * off(2 * index),
      workingDistance: hood + f * (1 + 1 / m) - h + readTo.workingDistance * off(2 * index + 1),
    };
  });
}

interface Errors {
  fieldWidth: number;
  workingDistance: number;
}

const fit = (all: RulerPhotograph[], readTo?: Errors) => fitLens(all, readTo ? { readTo } : {}) as FittedLens;

/** Least squares by reflections (QR), with nothing taken about a mean: solution and covariance of a two-column system. */
function byReflections(rows: readonly (readonly [number, number, number])[]) {
  const a = rows.map((row) => [...row]);
  for (const column of [0, 1]) {
    const norm = Math.hypot(...a.slice(column).map((row) => row[column]!));
    const v = a.map((row, index) => (index < column ? 0 : row[column]!));
    v[column]! += Math.sign(v[column]!) * norm;
    const square = v.reduce((sum, x) => sum + x * x, 0);
    for (const target of [0, 1, 2]) {
      const along = (2 * v.reduce((sum, x, index) => sum + x * a[index]![target]!, 0)) / square;
      v.forEach((x, index) => (a[index]![target]! -= along * x));
    }
  }
  const [[r11, r12, y1], [, r22, y2]] = a as [[number, number, number], [number, number, number]];
  const b = y2 / r22;
  const left = a.slice(2).reduce((sum, row) => sum + row[2]! ** 2, 0);
  return {
    a: (y1 - r12 * b) / r11,
    b,
    varA: (1 + (r12 / r22) ** 2) / r11 ** 2,
    cov: -r12 / (r11 * r22 ** 2),
    varB: 1 / r22 ** 2,
    meanSquare: left / (rows.length - 2),
  };
}

describe('a lens fitted to ruler photographs', () => {
  it('is the one found by reflections, with the errors found by shifting each reading', () => {
    const readTo = { fieldWidth: 0.3, workingDistance: 1 };
    const offs = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 14, maxLength: 14 });
    fc.assert(
      fc.property(made, offs, (lens, off) => {
        const all = photographs(lens, (index) => off[index]!, readTo);
        const line = byReflections(
          all.map(({ fieldWidth, sensorWidth, extension }) => {
            const sigma = (sensorWidth * readTo.fieldWidth) / fieldWidth ** 2;
            return [1 / sigma, extension / sigma, sensorWidth / fieldWidth / sigma];
          }),
        );
        fc.pre(line.b > 1e-4 && line.a > 0.01);
        const found = fit(all, readTo);
        const near = { relative: 1e-8, because: 'rounding of sums far from their mean' };
        expect(found.focalLength.value).toEqual(closeTo(1 / line.b, near));
        expect(found.focusMagnification.value).toEqual(closeTo(line.a, near));
        expect(found.focalLength.standardError).toEqual(closeTo(Math.sqrt(line.varB) / line.b ** 2, near));
        expect(found.focusMagnification.standardError).toEqual(closeTo(Math.sqrt(line.varA), near));
        expect(found.misfit! ** 2).toEqual(
          closeTo(line.meanSquare, { absolute: 1e-7, because: 'rounding of squares' }),
        );
        // h as a function of the line alone, differentiated numerically: the other way to carry errors over.
        const depth = (a: number, b: number) =>
          all.reduce((sum, { extension, workingDistance }) => {
            return sum + (1 + 1 / (a + b * extension)) / b - workingDistance!;
          }, 0) / all.length;
        const [da, db] = [line.a * 1e-5, line.b * 1e-5];
        const byA = (depth(line.a + da, line.b) - depth(line.a - da, line.b)) / (2 * da);
        const byB = (depth(line.a, line.b + db) - depth(line.a, line.b - db)) / (2 * db);
        const variance = byA ** 2 * line.varA + 2 * byA * byB * line.cov + byB ** 2 * line.varB + 1 / all.length;
        expect(found.frontPrincipalDepth?.value).toEqual(
          closeTo(depth(line.a, line.b), { absolute: 1e-5, because: 'near' }),
        );
        expect(found.frontPrincipalDepth?.standardError).toEqual(
          closeTo(Math.sqrt(variance), { relative: 1e-5, because: 'differences instead of derivatives' }),
        );
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  /** (found − true)/stated error over many made-up lenses: mean 0 and mean square 1 if the errors are stated rightly. */
  function pulls(readTo: Errors) {
    const runs = 2000;
    const sums = { f: [0, 0], m0: [0, 0], h: [0, 0] };
    const even = evenNumbers(5);
    const normal = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
    for (let run = 0; run < runs; run++) {
      const lens = { f: 24 + 156 * even(), m0: 0.05 + 0.45 * even(), h: 60 * even(), rings: [0, 12, 20, 36, 48] };
      const found = fit(photographs(lens, normal, readTo), readTo);
      const add = (sum: number[], { value, standardError }: FittedLens['focalLength'], truth: number) => {
        const pull = (value - truth) / standardError!;
        sum[0]! += pull / runs;
        sum[1]! += pull ** 2 / runs;
      };
      add(sums.f, found.focalLength, lens.f);
      add(sums.m0, found.focusMagnification, lens.m0);
      add(sums.h, found.frontPrincipalDepth!, lens.h - hood);
    }
    return sums;
  }

  it('is as far from the true lens as its standard errors say, over two thousand lenses', () => {
    const { f, m0, h } = pulls({ fieldWidth: 0.05, workingDistance: 0.5 });
    for (const [mean, meanSquare] of [f, m0, h]) {
      expect(mean).toEqual(closeTo(0, { absolute: 0.1, because: 'four standard deviations of 2000 pulls’ mean' }));
      expect(meanSquare).toEqual(closeTo(1, { absolute: 0.13, because: 'four standard deviations of their square' }));
    }
  });
});
