import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { cardinalPoints } from '#core/rig/cardinal-points.ts';
import { colourSpreadAtSensor } from '#core/rig/colour-spread-at-sensor.formula.ts';
import { colourSpreadOfCloseUpLens } from '#core/rig/colour-spread-of-close-up-lens.formula.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { on, unitLenses } from '#tests/support/rig-parts.ts';
import { valueIn } from '#tests/support/sample.ts';

/** The rig in one colour: a close-up lens whose power departs from the mean by a share. */
function inColour(lens: Lens, at: number, closeUpPower: number) {
  const { registerDistance } = lens;
  const camera: Part = { part: 'camera', registerDistance, sensorWidth: 36, sensorHeight: 24 };
  return assembleRig([camera, on(lens, { at }), { part: 'close-up lens', closeUpPower }]);
}

function workingDistance(lens: Lens, at: number, closeUpPower: number): number {
  const solved = solveRig(inColour(lens, at, closeUpPower));
  if (!('workingDistance' in solved)) throw new Error(solved.sharpPlane);
  return solved.workingDistance;
}

const glasses = fc.record({ closeUpPower: valueIn([1, 10]), abbeNumber: valueIn([20, 95]), at: valueIn([0.01, 0.2]) });
const secondOrder = { relative: 0.001, because: 'the next term is 1/(4 V²) of it, 0.0006 at V = 20' };

describe('blue and red through a close-up lens of one element', () => {
  it('are sharp as far apart on the subject as two solved rigs say, at infinity and focused close', () => {
    fc.assert(
      fc.property(unitLenses, glasses, (lens, { closeUpPower, abbeNumber, at }) => {
        if (lens.frontPrincipalDepth > 0.9 * lens.focalLength * (1 + 1 / at)) return;
        for (const setting of [0, at]) {
          const half = closeUpPower / (2 * abbeNumber);
          const [blue, red] = [half, -half].map((more) => workingDistance(lens, setting, closeUpPower + more));
          const mean = workingDistance(lens, setting, closeUpPower);
          const spread = colourSpreadOfCloseUpLens({ workingDistance: mean, closeUpPower, abbeNumber });
          expect(red! - blue!).toEqual(closeTo(spread, secondOrder));
        }
      }),
      { seed: 51, numRuns: 300 },
    );
  });

  it('are sharp as far apart at the sensor, for a subject that stays where it is', () => {
    fc.assert(
      fc.property(unitLenses, glasses, (lens, { closeUpPower, abbeNumber }) => {
        const subject = 1000 / closeUpPower;
        const half = closeUpPower / (2 * abbeNumber);
        const imageFromSensor = (power: number) => {
          const { focalLength, frontPrincipalDepth, imageDistance } = cardinalPoints(inColour(lens, 0, power))!;
          const s = subject + frontPrincipalDepth;
          return (focalLength * s) / (s - focalLength) - imageDistance;
        };
        const spread = colourSpreadAtSensor({ focalLength: lens.focalLength, closeUpPower, abbeNumber });
        const traced = imageFromSensor(closeUpPower - half) - imageFromSensor(closeUpPower + half);
        // On a long lens the picture moves by a good share of f: the first order is a few per cent out there.
        const share = (lens.focalLength * closeUpPower) / 1000 / abbeNumber;
        expect(traced).toEqual(closeTo(spread, { relative: 0.002 + share, because: 'first order in f Φ/V' }));
      }),
      { seed: 52, numRuns: 300 },
    );
  });
});
