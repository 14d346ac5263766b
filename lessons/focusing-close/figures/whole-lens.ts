import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { bodies } from '#site/state/crate.ts';

/** The camera that all lenses of this lesson are mounted on. */
export const camera: Part = {
  part: 'camera',
  registerDistance: bodies['body-36']['register-distance'],
  sensorWidth: bodies['body-36']['sensor-width'],
  sensorHeight: bodies['body-36']['sensor-height'],
};

/** Place of the lens in the chain. */
export const lensAt = 1;

interface WholeLens {
  readonly focalLength: number;
  readonly principalSeparation: number;
  readonly frontPrincipalDepth: number;
  readonly magnification: number;
}

/** A front rim behind the lens's own flange cannot be drawn: the lens then ends at its flange, and the figure says so. */
export function wholeLens(given: WholeLens): { positions: RigPositions; isContradictory: boolean } {
  try {
    return { positions: positionsOf(given), isContradictory: false };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { registerDistance } = lensOf(given);
    const least = registerDistance - given.focalLength - given.principalSeparation;
    return { positions: positionsOf({ ...given, frontPrincipalDepth: least }), isContradictory: true };
  }
}

function positionsOf(given: WholeLens): RigPositions {
  const { magnification } = given;
  return rigPositions(
    // The aperture is no matter of this lesson: an everyday one.
    assembleRig([camera, { part: 'lens', fNumber: 8, focusMagnification: magnification, lens: lensOf(given) }]),
  );
}

function lensOf({ magnification, ...points }: WholeLens) {
  return {
    ...points,
    pupilMagnification: 1,
    registerDistance: bodies['body-36']['register-distance'],
    focusing: { by: 'unit', closestMagnification: magnification },
    apertureControl: 'camera',
  } as const;
}
