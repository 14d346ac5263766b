import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { cardinalPoints, rigMatrix } from '#core/rig/cardinal-points.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig, SolvedRig } from '#core/rig/solved-rig.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { on, ring, unitLenses } from '#tests/support/rig-parts.ts';
import { valueIn } from '#tests/support/sample.ts';

interface Drawn {
  readonly camera: Part;
  readonly main: Lens;
  readonly front: Lens;
  readonly N: number;
  readonly at: number;
  readonly e: number;
  readonly k: number;
  readonly power: number;
}

const drawn: fc.Arbitrary<Drawn> = fc
  .record({
    main: unitLenses,
    front: unitLenses,
    N: valueIn([1, 32]),
    at: valueIn([0.01, 1]),
    e: valueIn([1, 150]),
    k: valueIn([1.2, 3]),
    power: valueIn([1, 10]),
  })
  .map((given) => ({
    ...given,
    camera: { part: 'camera', registerDistance: given.main.registerDistance, sensorWidth: 36, sensorHeight: 24 },
  }));

/** Chains of every kind around one ring, which stands where `…` is. */
const chainsAround: Readonly<Record<string, (given: Drawn, ...rings: Part[]) => Part[]>> = {
  'a lens on a ring': ({ camera, main, N, at }, ...rings) => [camera, ...rings, on(main, { at, fNumber: N })],
  'a lens turned round': ({ camera, main, N }, ...rings) => [
    camera,
    ...rings,
    on(main, { fNumber: N, reversed: true }),
  ],
  'a converter before the ring': ({ camera, main, N, at, k }, ...rings) => [
    camera,
    { part: 'converter', converterFactor: k, converterLength: 25, registerDistance: main.registerDistance },
    ...rings,
    on(main, { at, fNumber: N }),
  ],
  'a close-up lens in front': ({ camera, main, N, at, power }, ...rings) => [
    camera,
    on(main, { at, fNumber: N }),
    ...rings,
    { part: 'close-up lens', closeUpPower: power },
  ],
  'two lenses coupled': ({ camera, main, front, N }, ...rings) => [
    camera,
    on(main, { fNumber: N }),
    ...rings,
    on(front, { fNumber: 2, reversed: true }),
  ],
};

const kinds = Object.keys(chainsAround);
const solve = (parts: readonly Part[]) => solveRig(assembleRig(parts));
const isSharp = (solved: SolvedRig): solved is SharpRig =>
  solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside';

/** Numbers of one answer beside those of another, less what tells where parts stand. */
function expectSame(one: SolvedRig, other: SolvedRig) {
  expect(one.sharpPlane).toBe(other.sharpPlane);
  if (!isSharp(one) || !isSharp(other)) return;
  const scale = Math.abs(other.workingDistance) + other.focusDistance + 1000;
  const cancels = { relative: 1e-9, because: 'long distances cancel' };
  expect(one.magnification).toEqual(closeTo(other.magnification, cancels));
  expect(one.effectiveFNumber).toEqual(closeTo(other.effectiveFNumber, cancels));
  const absolute = { absolute: 1e-9 * scale * (1 + 1 / other.magnification), because: 'distances of that size cancel' };
  expect(one.workingDistance).toEqual(closeTo(other.workingDistance, absolute));
}

describe.each(kinds)('%s', (kind) => {
  const around = chainsAround[kind]!;
  const every = (law: (given: Drawn) => void) => fc.assert(fc.property(drawn, law), { seed: 31, numRuns: 200 });

  it('does not change with a ring of no length', () => {
    every((given) => expectSame(solve(around(given, ring(given.e), ring(0))), solve(around(given, ring(given.e)))));
  });

  it('does not mind the order of two rings next to each other, nor whether they are one', () => {
    every((given) => {
      const [one, other] = [ring(given.e), ring(17)];
      const together = solve(around(given, one, other));
      expectSame(together, solve(around(given, other, one)));
      expectSame(together, solve(around(given, ring(given.e + 17))));
    });
  });

  it('never loses more light with less extension', () => {
    every((given) => {
      const [less, more] = [solve(around(given, ring(given.e))), solve(around(given, ring(given.e * 1.5)))];
      if (!isSharp(less) || !isSharp(more) || less.upright || more.upright) return;
      // A gap in front of the lens is no extension: there only the other stop may come to limit.
      if (less.limitedBy !== more.limitedBy) return;
      expect(more.effectiveFNumber).toBeGreaterThanOrEqual(less.effectiveFNumber * (1 - 1e-12));
    });
  });

  it('images the subject back where the light runs the other way: A D − B C = 1', () => {
    every((given) => {
      const [A, B, C, D] = rigMatrix(assembleRig(around(given, ring(given.e))));
      const scale = Math.abs(A * D) + Math.abs(B * C);
      expect(A * D - B * C).toEqual(closeTo(1, { absolute: 1e-13 * scale, because: 'products of that size cancel' }));
    });
  });
});

describe('a lens turned round', () => {
  it('swaps its principal planes', () => {
    fc.assert(
      fc.property(drawn, ({ camera, main, e }) => {
        const forwards = cardinalPoints(assembleRig([camera, ring(e), on(main)]));
        const backwards = cardinalPoints(assembleRig([camera, ring(e), on(main, { reversed: true })]));
        const { registerDistance, focalLength } = main;
        const cancels = { absolute: 1e-9, because: 'distances up to a metre cancel' };
        // H' of the one stands before flange or rim as H of the other does behind the front.
        const rear = (points: typeof forwards) => (points?.imageDistance ?? NaN) - registerDistance - e;
        expect(rear(backwards)).toEqual(closeTo(forwards?.frontPrincipalDepth ?? NaN, cancels));
        expect(backwards?.frontPrincipalDepth).toEqual(closeTo(rear(forwards), cancels));
        expect(backwards?.focalLength).toEqual(closeTo(focalLength, { relative: 1e-9, because: 'as above' }));
        expect(backwards?.principalSeparation).toEqual(closeTo(main.principalSeparation, cancels));
      }),
      { seed: 32, numRuns: 300 },
    );
  });

  it('turns P upside down: turned twice, pupils and cone are as before', () => {
    fc.assert(
      fc.property(drawn, ({ camera, main, e, N }) => {
        const { focalLength, pupilMagnification: P, principalSeparation, frontPrincipalDepth, registerDistance } = main;
        // The mirror image of the lens, written out: what was flange is rim. Its own register puts H' where H was before the rim.
        const mirrored: Lens = {
          ...main,
          pupilMagnification: 1 / P,
          frontPrincipalDepth: focalLength - registerDistance,
          registerDistance: focalLength - frontPrincipalDepth,
        };
        if (mirrored.registerDistance <= 0) return;
        const camera2 = { ...camera, registerDistance: 2 * focalLength + 100 } as Part;
        const forwards = solve([camera2, ring(e), on(main, { fNumber: N })]);
        const turned = solve([camera2, ring(e), on(mirrored, { fNumber: N / P, reversed: true })]);
        expect(principalSeparation).toBe(mirrored.principalSeparation);
        expectSame(turned, forwards);
        if (isSharp(turned) && isSharp(forwards)) {
          const same = { relative: 1e-9, because: 'long distances cancel' };
          expect(turned.pupil?.entrancePupil).toEqual(closeTo(forwards.pupil?.entrancePupil ?? NaN, same));
        }
      }),
      { seed: 33, numRuns: 300 },
    );
  });

  it('exchanges subject and sensor: what it images m times one way it images 1/m times the other', () => {
    fc.assert(
      fc.property(drawn, ({ main, e }) => {
        const camera = (registerDistance: number): Part => ({
          part: 'camera',
          registerDistance,
          sensorWidth: 36,
          sensorHeight: 24,
        });
        const forwards = solve([camera(main.registerDistance), ring(e), on(main)]);
        if (forwards.sharpPlane !== 'in front') return;
        // The sensor put where the subject was, the rim facing it.
        const backwards = solve([camera(forwards.workingDistance), on(main, { reversed: true })]);
        if (!isSharp(backwards)) throw new Error(backwards.sharpPlane);
        const cancels = { relative: 1e-8, because: 'subject distances up to 300 focal lengths cancel' };
        expect(backwards.magnification * forwards.magnification).toEqual(closeTo(1, cancels));
        expect(backwards.workingDistance).toEqual(closeTo(main.registerDistance + e, cancels));
      }),
      { seed: 34, numRuns: 300 },
    );
  });
});

describe('a converter', () => {
  it('makes m and N_w k times as large, with the rings between lens and converter', () => {
    fc.assert(
      fc.property(drawn, ({ camera, main, e, k, N, at }) => {
        const { registerDistance } = main;
        const converter: Part = { part: 'converter', converterFactor: k, converterLength: 25, registerDistance };
        const rest = [ring(e), on(main, { at, fNumber: N })];
        const [bare, converted] = [solve([camera, ...rest]), solve([camera, converter, ...rest])];
        if (!isSharp(bare) || !isSharp(converted)) throw new Error('no sharp plane');
        const cancels = { relative: 1e-10, because: 'long distances cancel' };
        expect(converted.magnification).toEqual(closeTo(k * bare.magnification, cancels));
        expect(converted.effectiveFNumber).toEqual(closeTo(k * bare.effectiveFNumber, cancels));
        expect(converted.focusDistance).toEqual(closeTo(bare.focusDistance + 25, cancels));
      }),
      { seed: 35, numRuns: 300 },
    );
  });

  it('by its cardinal points does as the thin one they describe', () => {
    fc.assert(
      fc.property(drawn, ({ camera, main, e, k, N }) => {
        const { registerDistance } = main;
        const thin: Part = { part: 'converter', converterFactor: k, converterLength: 25, registerDistance };
        const objectDistance = 25 / (k - 1);
        const points: Part = {
          part: 'converter by points',
          focalLength: (-k * objectDistance) / (k - 1),
          principalSeparation: 0,
          frontPrincipalDepth: registerDistance - objectDistance,
          converterLength: 25,
        };
        const lens = on(main, { fNumber: N });
        expectSame(solve([camera, points, ring(e), lens]), solve([camera, thin, ring(e), lens]));
      }),
      { seed: 36, numRuns: 200 },
    );
  });
});
