import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearestRung, rungs } from '#site/state/rungs.ts';
import { quantities, valueIn } from '#tests/support/sample.ts';
import { bench } from '../bench.svelte.ts';
import { fNumberOfLimit, type Limits } from './pull.ts';

const range = bench.range('f-number');
const ladder = rungs('f-number', range);
const markNear = (fNumber: number) => ladder[nearestRung(ladder, fNumber)];

const lenses = quantities([
  'focal-length',
  'circle-of-confusion',
  'entrance-pupil-distance',
  'magnification',
]) as fc.Arbitrary<Record<string, number>>;

/** By similar triangles at the pupil: a point δ behind the sharp plane is blurred by c where D = c (u + δ)/(m |δ|). */
function fNumberBySimilarTriangles(lens: Limits, offset: number, side: 1 | -1): number {
  const { focalLength, circleOfConfusion, entrancePupilDistance, magnification } = lens;
  const kept = side * Math.max(1e-6, side * Math.max(offset, -0.98 * entrancePupilDistance));
  const widening = (magnification * Math.abs(kept)) / (entrancePupilDistance + kept);
  return (focalLength * widening) / circleOfConfusion;
}

it('sets a limit to where it is pulled, at the mark that similar triangles give', () => {
  fc.assert(
    fc.property(lenses, valueIn([-2, 2]), fc.constantFrom(1, -1), (given, share, side) => {
      const lens = {
        focalLength: given['focal-length']!,
        circleOfConfusion: given['circle-of-confusion']!,
        entrancePupilDistance: given['entrance-pupil-distance']!,
        magnification: given['magnification']!,
      };
      const offset = share * lens.entrancePupilDistance;
      const found = fNumberOfLimit(lens, offset, side as 1 | -1, range);
      expect(markNear(found)).toBe(markNear(fNumberBySimilarTriangles(lens, offset, side as 1 | -1)));
    }),
    { numRuns: 1000 },
  );
});

it('stops down for a limit farther away, and keeps a limit on its own side', () => {
  const lens = { focalLength: 50, circleOfConfusion: 0.03, entrancePupilDistance: 150, magnification: 0.5 };
  const at = (offset: number, side: 1 | -1) => fNumberOfLimit(lens, offset, side, range);
  expect(at(3, 1)).toBeGreaterThan(at(2, 1));
  expect(at(-3, -1)).toBeGreaterThan(at(-2, -1));
  expect(at(-5, 1)).toBeCloseTo(range.least, 12);
  expect(at(1e9, 1)).toBeCloseTo(at(1e8, 1), 4);
});
