import { OutOfRange } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { bodies } from '#site/state/crate.ts';

const ownRegister = bodies['body-36']['register-distance'];

/** A camera of the usual shape of picture, with the crate's register unless another is set. */
export function cameraPart(sensorWidth: number, registerDistance: number = ownRegister): Part {
  return { part: 'camera', registerDistance, sensorWidth, sensorHeight: (2 / 3) * sensorWidth };
}

/** A lens by its points, as a reader sets them: moved as a whole, on the mount that it is made for. */
export type LensByPoints = Readonly<
  Named<
    | 'focal-length'
    | 'principal-separation'
    | 'front-principal-depth'
    | 'pupil-magnification'
    | 'focus-magnification'
    | 'f-number'
  >
> & { readonly registerDistance?: number };

/** It as a part of a chain. */
export function lensPart(given: LensByPoints): Part {
  const { fNumber, focusMagnification, registerDistance = ownRegister } = given;
  const { focalLength, principalSeparation, frontPrincipalDepth, pupilMagnification } = given;
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

export interface DrawnChain {
  readonly positions: RigPositions;
  /** No lens is as the numbers have it: it is drawn as the nearest to it that can be. */
  readonly isContradictory: boolean;
}

/** What a figure says of such a lens. */
export const contradiction = 'no lens has its rim behind its flange';

/**
 * The chain that *parts* makes around a lens with its rim where the numbers have it.
 *
 * A front rim behind the lens's own flange cannot be drawn: the lens then ends at its flange, and the figure says so.
 *
 * @param parts the chain for a lens whose H is so deep behind its rim, mm
 */
export function drawnWithRim(given: LensByPoints, parts: (frontPrincipalDepth: number) => readonly Part[]): DrawnChain {
  const at = (depth: number) => rigPositions(assembleRig(parts(depth)));
  try {
    return { positions: at(given.frontPrincipalDepth), isContradictory: false };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { focalLength, principalSeparation, registerDistance = ownRegister } = given;
    return { positions: at(registerDistance - focalLength - principalSeparation), isContradictory: true };
  }
}
