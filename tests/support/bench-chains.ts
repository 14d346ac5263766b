import fc from 'fast-check';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import type { Chain, Link } from '#site/chain/chain.ts';
import { thingOf } from '#site/chain/own-thing.ts';
import type { NewPart } from '#site/kit/part.ts';
import { valueIn } from './sample.ts';

/** A chain as a reader puts it together from parts of their own, and the same as the engine takes it, made without the page. */
export interface BothWays {
  readonly chain: Chain;
  readonly parts: readonly Part[];
}

/** One link and its parts; *register* is the camera's. */
type Piece = (register: number) => { readonly link: Link; readonly parts: readonly Part[] };

let count = 0;
const link = (part: NewPart, set: Omit<Link, 'thing'> = {}): Link => ({
  thing: thingOf(part, `test-${++count}`),
  ...set,
});

const ring = valueIn([1, 120]).map((extension): Piece => () => ({
  link: link({ kind: 'ring', name: 'ring', extension, contacts: 'no' }),
  parts: [{ part: 'ring', extension, coupled: false }],
}));

const bellows = valueIn([40, 150]).map((extension): Piece => () => ({
  link: link({ kind: 'bellows', name: 'bellows', shortest: 40, longest: 150 }, { extension }),
  parts: [{ part: 'bellows', shortest: 40, longest: 150, extension, coupled: false }],
}));

const converter = fc
  .record({ factor: valueIn([1.2, 3]), length: valueIn([15, 50]) })
  .map(({ factor, length }): Piece => (registerDistance) => ({
    link: link({
      kind: 'converter',
      name: 'converter',
      'converter-factor': factor,
      'converter-length': length,
      contacts: 'no',
    }),
    parts: [{ part: 'converter', converterFactor: factor, converterLength: length, registerDistance, coupled: false }],
  }));

const closeUp = valueIn([0.5, 10]).map((power): Piece => () => ({
  link: link({ kind: 'close-up-lens', name: 'close-up lens', 'close-up-power': power, glass: 'single' }),
  parts: [
    { part: 'ring', extension: 5 },
    { part: 'close-up lens', closeUpPower: power },
  ],
}));

const holder = (kind: 'reversing-ring' | 'coupling-ring') =>
  valueIn([1, 20]).map((extension): Piece => () => ({
    link: link({ kind, name: kind, extension }),
    parts: [{ part: 'ring', extension, coupled: false }],
  }));

const objective = fc
  .record({ engraved: valueIn([2, 20]), aperture: valueIn([0.05, 0.4]), room: valueIn([2, 30]) })
  .map(({ engraved, aperture, room }): Piece => () => ({
    link: link({
      kind: 'objective',
      name: 'objective',
      'objective-magnification': engraved,
      'numerical-aperture': aperture,
      'working-distance': room,
      'tube-focal-length': 200,
    }),
    parts: [
      { part: 'ring', extension: 3 },
      {
        part: 'objective',
        objectiveMagnification: engraved,
        numericalAperture: aperture,
        workingDistance: room,
        design: { tubeFocalLength: 200 },
        parfocalDistance: Math.max(45, room + 20),
      },
    ],
  }));

/** *k* that a converter has by its planes: *x* = (k − 1)²/k. */
const enlarging = (x: number) => Number((1 + x / 2 + Math.sqrt(x + (x * x) / 4)).toPrecision(3));

const byPoints = fc
  .record({
    spread: valueIn([60, 200]),
    separation: valueIn([-8, 8]),
    depth: valueIn([0, 14]),
    length: valueIn([15, 50]),
  })
  .map(({ spread, separation, depth, length }): Piece => () => ({
    link: link({
      kind: 'converter',
      name: 'converter',
      'converter-factor': enlarging((length - separation) / spread),
      'converter-length': length,
      contacts: 'no',
      'focal-length': spread,
      'principal-separation': separation,
      'front-principal-depth': depth,
    }),
    parts: [
      {
        part: 'converter by points',
        focalLength: -spread,
        principalSeparation: separation,
        frontPrincipalDepth: depth,
        converterLength: length,
        coupled: false,
      },
    ],
  }));

const tubeLens = valueIn([100, 250]).map((focalLength): Piece => () => ({
  link: link({ kind: 'tube-lens', name: 'tube lens', 'tube-focal-length': focalLength }),
  parts: [{ part: 'tube lens', focalLength }],
}));

const engraved = fc.record({ engraved: valueIn([2, 20]), aperture: valueIn([0.05, 0.4]), room: valueIn([2, 30]) });

/** On a tube lens, without the adapter that a camera lens takes; or, with a length of tube engraved, on rings. */
const onTube = (kind: 'objective' | 'finite-objective') =>
  engraved.map(({ engraved, aperture, room }): Piece => () => ({
    link: link({
      kind,
      name: 'objective',
      'objective-magnification': engraved,
      'numerical-aperture': aperture,
      'working-distance': room,
      ...(kind === 'objective' ? { 'tube-focal-length': 200 } : { 'tube-length': 160 }),
    }),
    parts: [
      {
        part: 'objective',
        objectiveMagnification: engraved,
        numericalAperture: aperture,
        workingDistance: room,
        design: kind === 'objective' ? { tubeFocalLength: 200 } : { imageDistance: 150 },
        parfocalDistance: Math.max(45, room + 20),
      },
    ],
  }));

/** Lenses of which an owner knows everything, that are focused as a whole. */
const lens = (turned: boolean, isFar = false) =>
  fc
    .record({
      focalLength: valueIn([10, 200]),
      separation: valueIn([-0.3, 0.3]),
      barrel: valueIn([5, 250]),
      pupils: valueIn([0.3, 3]),
      register: valueIn([16, 60]),
      closest: valueIn([0.05, 1.2]),
      share: fc.oneof(fc.constant(0), valueIn([0, 1])),
      stop: valueIn([0, 1]),
      sticksOut: valueIn([0, 12]),
      isMadeFor: fc.boolean(),
    })
    .map(
      ({ focalLength, separation, barrel, pupils, closest, share, stop, sticksOut, isMadeFor, ...made }): Piece =>
        (ofCamera) => {
          const register = isMadeFor ? ofCamera : made.register;
          const principalSeparation = separation * focalLength;
          // No deeper than a kit takes it: such a lens has a shorter barrel or a longer one.
          const deep = barrel + register - focalLength - principalSeparation;
          const frontPrincipalDepth = Math.min(300, Math.max(-200, deep));
          const focusMagnification = isFar ? 0 : share * closest;
          const fNumber = 1.8 * (22 / 1.8) ** stop;
          const known: Lens = {
            focalLength,
            principalSeparation,
            frontPrincipalDepth,
            pupilMagnification: pupils,
            registerDistance: register,
            focusing: { by: 'unit', closestMagnification: closest },
            apertureControl: 'lens',
            rearProtrusion: sticksOut,
          };
          const part: NewPart = {
            kind: 'lens',
            name: 'lens',
            'focal-length': focalLength,
            'max-aperture': 1.8,
            'smallest-aperture': 22,
            'focus-magnification': closest,
            focusing: 'whole',
            iris: 'lens',
            'rear-protrusion': sticksOut,
            'pupil-magnification': pupils,
            'principal-separation': principalSeparation,
            'front-principal-depth': frontPrincipalDepth,
            'register-distance': register,
          };
          return {
            link: link(part, { focus: focusMagnification, fNumber, ...(turned && { turned }) }),
            parts: [{ part: 'lens', lens: known, focusMagnification, fNumber, reversed: turned }],
          };
        },
    );

const spacers = fc.oneof(
  fc.constant<Piece[]>([]),
  fc.array(ring, { maxLength: 3 }),
  bellows.map((one) => [one]),
);

const some = <T>(one: fc.Arbitrary<T>) =>
  fc.oneof(
    fc.constant<T[]>([]),
    one.map((piece) => [piece]),
  );

/** The kinds of chains that photographers mount, what can stand in each left to chance. */
export const kindsOfChains = {
  lens: fc.tuple(spacers, lens(false)).map(([tubes, one]) => [...tubes, one]),
  turned: fc.tuple(spacers, holder('reversing-ring'), lens(true)).map(([tubes, held, one]) => [...tubes, held, one]),
  'close-up': fc
    .tuple(spacers, lens(false), fc.array(closeUp, { minLength: 1, maxLength: 2 }))
    .map(([tubes, one, before]) => [...tubes, one, ...before]),
  converter: fc
    .tuple(some(ring), converter, spacers, lens(false), some(closeUp))
    .map(([rear, one, tubes, main, before]) => [...rear, one, ...tubes, main, ...before]),
  coupled: fc
    .tuple(spacers, lens(false), holder('coupling-ring'), lens(true, true))
    .map(([tubes, main, held, front]) => [...tubes, main, held, front]),
  objective: fc.tuple(some(ring), lens(false, true), objective).map(([tubes, main, one]) => [...tubes, main, one]),
  'converter by its planes': fc
    .tuple(some(ring), byPoints, some(ring), lens(false))
    .map(([rear, one, tubes, main]) => [...rear, one, ...tubes, main]),
  'tube lens': fc.tuple(spacers, tubeLens, onTube('objective')).map(([tubes, one, front]) => [...tubes, one, front]),
  'objective for a tube': fc.tuple(spacers, onTube('finite-objective')).map(([tubes, one]) => [...tubes, one]),
} as const satisfies Readonly<Record<string, fc.Arbitrary<Piece[]>>>;

export type KindOfChain = keyof typeof kindsOfChains;

const camera = fc.record({
  width: valueIn([10, 60]),
  register: valueIn([16, 50]),
  pixels: fc.integer({ min: 2000, max: 12000 }),
});

/** Chains of one kind, both ways. */
export function chainsOfKind(kind: KindOfChain): fc.Arbitrary<BothWays> {
  return fc.tuple(camera, kindsOfChains[kind]).map(([{ width, register, pixels }, pieces]) => {
    const body = link({
      kind: 'camera',
      name: 'camera',
      'sensor-width': width,
      'sensor-height': width / 1.5,
      'register-distance': register,
      'pixels-across': pixels,
    });
    const made = pieces.map((piece) => piece(register));
    return {
      chain: [body, ...made.map((piece) => piece.link)],
      parts: [
        { part: 'camera', registerDistance: register, sensorWidth: width, sensorHeight: width / 1.5 },
        ...made.flatMap((piece) => piece.parts),
      ],
    };
  });
}

/** Chains of all kinds, both ways. */
export const benchChains: fc.Arbitrary<BothWays> = fc.oneof(
  ...(Object.keys(kindsOfChains) as KindOfChain[]).map(chainsOfKind),
);
