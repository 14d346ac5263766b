import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { cardinalPoints } from '#core/rig/cardinal-points.ts';
import { focusRange } from '#core/rig/focusing.ts';
import { ImpossibleChain } from '#core/rig/impossible-chain.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import { stopsOf } from '#core/rig/stops.ts';

/** Sensible numbers, and now and then one that no part has. */
const number = fc.oneof(
  { weight: 40, arbitrary: fc.double({ min: 0.2, max: 120, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, -1, NaN, Infinity, -Infinity, 1e12, 1e-12) },
);

/** The rest of a state, the first of which is the lens itself as a rule. */
const state = fc.record({
  focusMagnification: fc.constantFrom(0.1, 0.2, 5),
  focalLength: number,
  principalSeparation: number,
  frontPrincipalDepth: number,
  pupilMagnification: number,
  fNumberDrift: number,
});

const lens: fc.Arbitrary<Lens> = fc
  .record({
    focalLength: number,
    principalSeparation: number,
    frontPrincipalDepth: number,
    pupilMagnification: number,
    registerDistance: number,
    focusing: fc.oneof(
      fc.record({ by: fc.constant('unit' as const), closestMagnification: number }),
      fc.record({
        by: fc.constant('internal' as const),
        closestMagnification: number,
        closestFocusDistance: number,
        keeps: fc.constantFrom('entrance-pupil' as const, 'f-number' as const, 'iris-and-rear-group' as const),
      }),
    ),
    apertureControl: fc.constantFrom('lens' as const, 'camera' as const),
    states: fc.option(fc.array(state, { maxLength: 2 }), { freq: 1 }),
    firstDrift: fc.oneof({ weight: 9, arbitrary: fc.constant(1) }, { weight: 1, arbitrary: number }),
  })
  .map(({ states, firstDrift, ...one }) => {
    if (!states) return one;
    const { focalLength, principalSeparation, frontPrincipalDepth, pupilMagnification } = one;
    const first = { focalLength, principalSeparation, frontPrincipalDepth, pupilMagnification };
    return {
      ...one,
      focusing: {
        by: 'states' as const,
        states: [{ focusMagnification: 0, ...first, fNumberDrift: firstDrift }, ...states],
      },
    };
  });

const part: fc.Arbitrary<Part> = fc.oneof(
  fc.record({ part: fc.constant('ring' as const), extension: number }),
  fc.record({ part: fc.constant('bellows' as const), extension: number, shortest: number, longest: number }),
  fc.record({
    part: fc.constant('converter' as const),
    converterFactor: number,
    converterLength: number,
    registerDistance: number,
  }),
  fc.record({
    part: fc.constant('converter by points' as const),
    focalLength: number.map((length) => -length),
    principalSeparation: number,
    frontPrincipalDepth: number,
    converterLength: number,
  }),
  fc.record({
    part: fc.constant('lens' as const),
    lens,
    focusMagnification: fc.constantFrom(0, 0.1, 0.2, 5),
    fNumber: number,
    reversed: fc.boolean(),
  }),
  fc.record({ part: fc.constant('close-up lens' as const), closeUpPower: number, clearAperture: number }),
  fc.record({ part: fc.constant('tube lens' as const), focalLength: number, clearAperture: number }),
  fc.record({
    part: fc.constant('objective' as const),
    objectiveMagnification: number,
    numericalAperture: fc.oneof(fc.double({ min: 0.001, max: 1.1, noNaN: true }), fc.constantFrom(0, NaN)),
    workingDistance: number,
    design: fc.oneof(fc.record({ tubeFocalLength: number }), fc.record({ imageDistance: number })),
    parfocalDistance: number,
  }),
);

const camera: fc.Arbitrary<Part> = fc.record({
  part: fc.constant('camera' as const),
  registerDistance: number,
  sensorWidth: number,
  sensorHeight: number,
});

const chain = fc.tuple(camera, fc.array(part, { maxLength: 5 })).map(([first, rest]) => [first, ...rest]);

/** Every number in an answer, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('any chain whatever', () => {
  const outcomes = new Map<string, number>();

  it('is answered in finite numbers, or refused by name', () => {
    fc.assert(
      fc.property(chain, (parts) => {
        let outcome: string;
        try {
          const rig = assembleRig(parts);
          const solved = solveRig(rig);
          const answers = [solved, stopsOf(rig), cardinalPoints(rig), focusRange(parts)];
          for (const number of numbersIn(answers)) expect(number).toSatisfy(Number.isFinite);
          outcome = solved.sharpPlane;
        } catch (error) {
          if (!(error instanceof ImpossibleChain || error instanceof OutOfRange)) throw error;
          outcome = error.name;
        }
        outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
      }),
      { seed: 71, numRuns: 20_000 },
    );
  });

  it('has come out in every way there is, but for infinity, which chance does not hit', () => {
    for (const outcome of ['in front', 'inside', 'nowhere', 'ImpossibleChain', 'OutOfRange']) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(50);
    }
  });
});
