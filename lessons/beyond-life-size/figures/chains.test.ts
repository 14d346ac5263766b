import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { camelCase } from '#core/quantity/formula.ts';
import { bench } from '../bench.svelte.ts';
import { chainOf, type Given } from './chains.ts';
import { answersOf, inputsOf, ofRoads, type Road } from './roads.ts';

const cancels = { relative: 1e-7, because: 'distances many times as long cancel in the engine' };

/** Values anywhere in the fields of the bench. */
const anyGiven = fc.record(
  Object.fromEntries(
    ([...ofRoads, 'sensor-width'] as const).map((name) => {
      const { least, most } = bench.range(name);
      const share = fc.noBias(fc.integer({ min: 0, max: 1000 }));
      const value = (part: number) => (least > 0 ? least * (most / least) ** part : least + part * (most - least));
      return [camelCase(name), share.map((part) => value(part / 1000))];
    }),
  ),
) as unknown as fc.Arbitrary<Given>;

function answerOf(road: Road, given: Given) {
  try {
    return answersOf[road](given);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

describe.each(Object.keys(inputsOf) as Road[])('the chain drawn for the road of %s', (road) => {
  it('is what its formulas say: size, cone, and room where its rim can be', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyGiven, (given) => {
        const answer = answerOf(road, given);
        const { positions, notice } = chainOf[road](given);
        if (!answer || !positions || answer.magnification === 0 || !Number.isFinite(answer.workingDistance)) return;
        const { solved, foremost } = positions;
        const { sharpPlane } = positions;
        if (sharpPlane === null) return;
        compared++;
        expect(Math.abs(positions.signedMagnification!)).toEqual(closeTo(answer.magnification, cancels));
        expect('effectiveFNumber' in solved && solved.effectiveFNumber).toEqual(
          closeTo(answer.effectiveFNumber, cancels),
        );
        if (notice !== undefined) return;
        const room = { absolute: 1e-7 * sharpPlane, because: cancels.because };
        expect(sharpPlane - foremost).toEqual(closeTo(answer.workingDistance, room));
      }),
      { seed: 31, numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});
