import { OutOfRange } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { bodies, rings as owned } from '#site/state/crate.ts';

/** What of the bench the chain is put together from. */
export const ofChain = [
  'focal-length',
  'focus-magnification',
  'f-number',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'sensor-width',
] as const;
type Given = Readonly<Named<(typeof ofChain)[number]>>;

const subsets = owned.reduce<number[][]>((all, ring) => [...all, ...all.map((some) => [...some, ring])], [[]]);
const sum = (lengths: readonly number[]) => lengths.reduce((total, length) => total + length, 0);

/** The rings that make up an extension: those picked where they do, else some of the crate's, or none. */
export function ringsInUse(extension: number, picked: readonly number[]): readonly number[] {
  return sum(picked) === extension ? picked : (subsets.find((lengths) => sum(lengths) === extension) ?? []);
}

/** Where everything stands with these rings between camera and lens, and what cannot be as the numbers have it. */
export function extensionChain(given: Given, extension: number, rings: readonly number[]) {
  const tubes = sum(rings) === extension ? rings : [extension];
  const parts: Part[] = [
    camera(given.sensorWidth),
    ...tubes.map((length): Part => ({ part: 'ring', extension: length })),
  ];
  return { lensAt: parts.length, ...withLens(parts, given) };
}

const { 'register-distance': registerDistance } = bodies['body-36'];

const camera = (sensorWidth: number): Part => ({
  part: 'camera',
  registerDistance,
  sensorWidth,
  sensorHeight: (2 / 3) * sensorWidth,
});

function lensOf({ fNumber, focusMagnification, ...given }: Given, frontPrincipalDepth: number): Part {
  const { focalLength, principalSeparation, pupilMagnification } = given;
  return {
    part: 'lens',
    fNumber,
    focusMagnification,
    lens: {
      focalLength,
      principalSeparation,
      frontPrincipalDepth,
      pupilMagnification,
      registerDistance,
      focusing: { by: 'unit', closestMagnification: focusMagnification },
      apertureControl: 'camera',
    },
  };
}

/** A front rim behind the lens's own flange cannot be drawn: the lens then ends at its flange, and the figure says so. */
function withLens(parts: readonly Part[], given: Given): { positions: RigPositions; isContradictory: boolean } {
  const at = (depth: number) => rigPositions(assembleRig([...parts, lensOf(given, depth)]));
  try {
    return { positions: at(given.frontPrincipalDepth), isContradictory: false };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const least = registerDistance - given.focalLength - given.principalSeparation;
    return { positions: at(least), isContradictory: true };
  }
}
