import fc from 'fast-check';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import type { Rig } from '#core/rig/rig.ts';
import { camera, on, unitLenses } from './rig-parts.ts';
import { valueIn } from './sample.ts';

/** Lenses that come no closer by themselves than life size, at a setting, a mark and a way round. */
const mounted = (lens: Lens, reversed: boolean) =>
  fc
    .record({ at: fc.oneof(fc.constant(0), valueIn([0, 1])), fNumber: valueIn([1.4, 32]) })
    .map((set) => on(lens, { ...set, reversed }));

const ring = valueIn([1, 120]).map((extension): Part => ({ part: 'ring', extension }));
const bellows = valueIn([40, 150]).map((extension): Part => ({
  part: 'bellows',
  extension,
  shortest: 40,
  longest: 150,
}));
const spacers = fc.oneof(
  fc.constant<Part[]>([]),
  fc.array(ring, { maxLength: 3 }),
  bellows.map((part) => [part]),
);
const converters = fc.oneof(
  fc.constant<Part[]>([]),
  fc
    .record({ factor: valueIn([1.2, 3]), length: valueIn([15, 50]) })
    .map(({ factor, length }): Part[] => [
      { part: 'converter', converterFactor: factor, converterLength: length, registerDistance: 44 },
    ]),
);
const closeUps = fc.array(
  valueIn([0.5, 10]).map((closeUpPower): Part => ({ part: 'close-up lens', closeUpPower })),
  { maxLength: 2 },
);
const hood = fc.option(
  valueIn([1, 40]).map((extension): Part => ({ part: 'ring', extension })),
  { nil: undefined },
);

/** Infinity objectives on a lens or tube lens, and finite ones on a tube. */
const objectives = fc
  .record({ engraved: valueIn([2, 20]), aperture: valueIn([0.05, 0.4]), room: valueIn([2, 30]) })
  .map(({ engraved, aperture, room }): Part => ({
    part: 'objective',
    objectiveMagnification: engraved,
    numericalAperture: aperture,
    workingDistance: room,
    design: { tubeFocalLength: 200 },
    parfocalDistance: 45,
  }));

const onLens = unitLenses.chain((lens) =>
  fc.oneof(
    { weight: 4, arbitrary: fc.tuple(mounted(lens, false), closeUps, hood) },
    { weight: 3, arbitrary: fc.tuple(mounted(lens, true), fc.constant<Part[]>([]), hood) },
    {
      weight: 3,
      arbitrary: fc
        .tuple(
          mounted(lens, false),
          unitLenses.chain((other) => mounted(other, true)),
        )
        .map(([main, other]): [Part, Part[], undefined] => [main, [{ part: 'ring', extension: 2 }, other], undefined]),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(mounted(lens, false), objectives)
        .map(([main, objective]): [Part, Part[], undefined] => [
          main,
          [{ part: 'ring', extension: 10 }, objective],
          undefined,
        ]),
    },
  ),
);

const onTube = fc
  .tuple(valueIn([100, 250]), valueIn([20, 120]), objectives)
  .map(([focalLength, gap, objective]): Part[] => [
    { part: 'ring', extension: Math.max(1, focalLength - 44) },
    { part: 'tube lens', focalLength },
    { part: 'ring', extension: gap },
    objective,
  ]);

/** Chains that can be built, of every kind of part; where the sharp plane lies is left to chance. */
export const buildableChains: fc.Arbitrary<Part[]> = fc.oneof(
  {
    weight: 9,
    arbitrary: fc
      .tuple(converters, spacers, onLens)
      .map(([converter, tubes, [lens, before, last]]) => [
        camera,
        ...converter,
        ...tubes,
        lens,
        ...before,
        ...(last ? [last] : []),
      ]),
  },
  { weight: 1, arbitrary: onTube.map((tube) => [camera, ...tube]) },
);

/** The same, put together. */
export const buildableRigs: fc.Arbitrary<Rig> = buildableChains.map((parts) => assembleRig(parts));
