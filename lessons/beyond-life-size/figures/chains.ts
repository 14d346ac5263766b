import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { cameraPart, contradiction, drawnWithRim, lensPart } from '#site/figures/side-view/lens-on-camera.ts';
import type { SideViewDimension } from '#site/figures/side-view/side-view.ts';
import { rings } from '#site/state/crate.ts';
import { parts as owned } from '#site/state/crate-parts.ts';
import { crateRegister } from '#site/state/lens-marks.ts';
import type { Road, RoadGiven } from './roads.ts';
import { plainLens } from './plain-lens.ts';

export type Given = RoadGiven & { readonly sensorWidth: number };

/** A road as it is drawn; without positions where no such chain can be. */
export interface DrawnRoad {
  readonly positions?: RigPositions;
  readonly labels: readonly string[];
  readonly notice?: string;
  /** What is as long as it is, and may be pulled: the part that holds it and the part that goes with the hand. */
  readonly lengths: readonly { readonly name: Length; readonly part: number; readonly pulls: number }[];
}

type Length = 'extension' | 'turned-lens.extension' | 'front-ring.extension' | 'rear-ring.extension';

const { bellows, 'coupling-ring': coupling } = owned;
const allRings = rings.reduce((sum, length) => sum + length, 0);

const ring = (extension: number): Part => ({ part: 'ring', extension });

/** So much extension as rings, or as bellows where the crate's rings together are too short and its bellows are not. */
const extensionPart = (extension: number): Part =>
  extension > allRings && extension <= bellows.longest ? { part: 'bellows', extension, ...bellows } : ring(extension);

/** A part that is hardly longer than its letters are thin needs no name: its dimension says what it is. */
const named = (name: string, length: number) => (length >= 8 ? name : '');

const millimetres = (focalLength: number) => `${Number(focalLength.toPrecision(3))} mm`;

/** Camera, lens, and what each road puts between, before or behind. */
export const chainOf: Readonly<Record<Road, (given: Given) => DrawnRoad>> = {
  rings(given) {
    const { positions, isContradictory } = drawnWithRim(ownLens(given), (frontPrincipalDepth) => [
      cameraPart(given.sensorWidth),
      extensionPart(given.extension),
      lensPart({ ...ownLens(given), frontPrincipalDepth }),
    ]);
    return {
      positions,
      labels: ['', named(given.extension > allRings ? 'bellows' : 'rings', given.extension), 'lens'],
      lengths: [{ name: 'extension', part: 1, pulls: 2 }],
      ...(isContradictory && { notice: contradiction }),
    };
  },

  converter(given) {
    const { positions, isContradictory } = drawnWithRim(ownLens(given), (frontPrincipalDepth) => [
      cameraPart(given.sensorWidth),
      ring(given.rearRingExtension),
      { part: 'converter', ...converterOf(given) },
      ring(given.frontRingExtension),
      lensPart({ ...ownLens(given), frontPrincipalDepth }),
    ]);
    return {
      positions,
      labels: [
        '',
        named('ring', given.rearRingExtension),
        'converter',
        named('ring', given.frontRingExtension),
        'lens',
      ],
      lengths: [
        { name: 'front-ring.extension', part: 3, pulls: 4 },
        { name: 'rear-ring.extension', part: 1, pulls: 2 },
      ],
      ...(isContradictory && { notice: contradiction }),
    };
  },

  reversed(given) {
    const lens = {
      focalLength: given.turnedLensFocalLength,
      principalSeparation: given.turnedLensPrincipalSeparation,
      pupilMagnification: given.turnedLensPupilMagnification,
      registerDistance: given.turnedLensRegisterDistance,
      focusMagnification: 0,
      fNumber: given.fNumber,
    };
    const shallowest = lens.registerDistance - lens.focalLength - lens.principalSeparation;
    const isContradictory = given.turnedLensFrontPrincipalDepth < shallowest;
    // H stays where the numbers have it: a rim that no lens has is drawn nearer to the camera.
    const depth = Math.max(shallowest, given.turnedLensFrontPrincipalDepth);
    const from = given.registerDistance + given.turnedLensExtension + given.turnedLensFrontPrincipalDepth - depth;
    const register = Math.min(given.registerDistance, from);
    const turned = turnedRound(lensPart({ ...lens, frontPrincipalDepth: depth }), given.turnedLensRearProtrusion);
    const positions =
      register > 0 ? placed([cameraPart(given.sensorWidth, register), ring(from - register), turned]) : undefined;
    return {
      ...(positions && { positions }),
      labels: ['', named('ring', from - register), 'lens, turned'],
      lengths: [{ name: 'turned-lens.extension', part: 1, pulls: 2 }],
      ...(isContradictory && { notice: contradiction }),
    };
  },

  coupled(given) {
    const { reversedLensFocalLength, reversedLensFNumber, reversedLensRegisterDistance } = given;
    const front = lensPart(plainLens(reversedLensFocalLength, reversedLensFNumber, reversedLensRegisterDistance));
    const positions = placed([
      cameraPart(given.sensorWidth),
      lensPart(plainLens(given.mainLensFocalLength, given.mainLensFNumber)),
      ring(coupling.extension),
      turnedRound(front, given.reversedLensRearProtrusion),
    ]);
    return {
      ...(positions && { positions }),
      labels: ['', millimetres(given.mainLensFocalLength), '', `${millimetres(reversedLensFocalLength)}, turned`],
      lengths: [],
    };
  },

  objective(given) {
    const main = lensPart(plainLens(given.mainLensFocalLength, given.mainLensFNumber));
    const { objectiveMagnification, numericalAperture, tubeFocalLength } = given;
    const workingDistance = given.objectiveWorkingDistance;
    const objective: Part = {
      part: 'objective',
      objectiveMagnification,
      numericalAperture,
      workingDistance,
      design: { tubeFocalLength },
      parfocalDistance: Math.max(usualParfocal, workingDistance + shortestObjective),
    };
    const positions = placed([cameraPart(given.sensorWidth), main, ring(adapter), objective]);
    return {
      ...(positions && { positions }),
      labels: ['', millimetres(given.mainLensFocalLength), '', 'objective'],
      lengths: [],
    };
  },
};

/** From an objective's shoulder to the specimen, mm, as most are made, and its own length at least. */
const usualParfocal = 45;
const shortestObjective = 20;
/** Between the lens's thread and the objective's shoulder, mm. */
const adapter = 3;

const converterOf = ({ converterFactor, converterLength }: Given) => ({
  converterFactor,
  converterLength,
  registerDistance: crateRegister,
});

/** The lens at its closest focus, on the crate's mount: the register that the reader sets is that of the camera for a lens turned round. */
const ownLens = (given: Given) => ({ ...given, registerDistance: crateRegister });

/** A lens front to back, with what stands out behind its flange. */
const turnedRound = (part: Part, rearProtrusion: number): Part =>
  part.part === 'lens' ? { ...part, reversed: true, lens: { ...part.lens, rearProtrusion } } : part;

/** Where everything stands; undefined for what no camera could hold. */
function placed(chain: readonly Part[]): RigPositions | undefined {
  try {
    return rigPositions(assembleRig(chain));
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** The dimensions of a road: the room, and what lengths it has. */
export function dimensionsOf(
  { lengths, notice }: DrawnRoad,
  room: string | undefined,
  print: (name: Length) => string,
  length: (name: Length) => number,
): SideViewDimension[] {
  return [
    ...(room === undefined || notice !== undefined ? [] : [{ name: 'working-distance', value: room } as const]),
    ...lengths
      .filter(({ name }) => length(name) > 0)
      .map(({ name, part }) => ({ name: 'extension', value: print(name), part }) as const),
  ];
}
