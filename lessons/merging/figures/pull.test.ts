import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearestRung, rungs } from '#site/state/rungs.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { valueIn } from '#tests/support/sample.ts';
import { bench } from '../bench.svelte.ts';
import { overlapOfShift } from './pull.ts';

const range = bench.range('overlap');
const ladder = rungs('overlap', range);

const stacks = fc.record({
  depthOfField: valueIn([0.01, 40]),
  entrancePupilDistance: valueIn([40, 2000]),
  sensorWidth: valueIn([5, 60]),
  pixelPitch: valueIn([0.001, 0.01]),
});
type Stack = typeof stacks extends fc.Arbitrary<infer S> ? S : never;

/** u/(u − Δ) − 1 with Δ = T (1 − overlap), at half the width, in pixels; without end where the pupil would be carried to the detail. */
function shiftAt({ depthOfField, entrancePupilDistance, sensorWidth, pixelPitch }: Stack, overlap: number): number {
  const step = depthOfField * (1 - overlap);
  if (step >= entrancePupilDistance) return Infinity;
  return ((entrancePupilDistance / (entrancePupilDistance - step) - 1) * sensorWidth) / (2 * pixelPitch);
}

it('gives the overlap with which a step moves the side by so many pixels, or the end that comes nearest', () => {
  fc.assert(
    fc.property(stacks, valueIn([0.01, 1e4]), (stack, pixels) => {
      const overlap = overlapOfShift(stack, pixels, range);
      expect(overlap).toBeGreaterThanOrEqual(range.least);
      expect(overlap).toBeLessThanOrEqual(range.most);
      const shift = shiftAt(stack, overlap);
      if (overlap > range.least && overlap < range.most)
        // The rest is what the last digit of the overlap makes of the step.
        expect(shift).toEqual(closeTo(pixels, { relative: 1e-9, because: 'the overlap is halved to its last digit' }));
      else expect(shift < pixels).toBe(overlap === range.least);
    }),
    { numRuns: 500 },
  );
});

it('stands at the rung whose own shift is nearest, but where two are as near to a hand', () => {
  fc.assert(
    fc.property(stacks, valueIn([0.01, 1e4]), (stack, pixels) => {
      const off = (rung: number) => Math.abs(shiftAt(stack, ladder[rung]!) - pixels);
      const found = nearestRung(ladder, overlapOfShift(stack, pixels, range));
      const best = ladder.reduce((least, _, rung) => (off(rung) < off(least) ? rung : least), 0);
      expect(Math.abs(found - best)).toBeLessThanOrEqual(1);
      // A detail that would be reached moves without end: there the last step that is possible stands.
      if (found !== best && Number.isFinite(off(found))) {
        const between = Math.abs(shiftAt(stack, ladder[found]!) - shiftAt(stack, ladder[best]!));
        expect(off(found) - off(best)).toBeLessThan(0.5 * between);
      }
    }),
    { numRuns: 300 },
  );
});
