import { assembleRig } from '#core/rig/assemble.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';

/** What of the bench the drawing is put together from. */
export type Given = Readonly<
  Record<
    | 'focal-length'
    | 'f-number'
    | 'pupil-magnification'
    | 'principal-separation'
    | 'barrel-length'
    | 'register-distance'
    | 'sensor-width',
    number
  >
>;

export interface Chain {
  readonly positions: RigPositions;
  /** The rim would lie behind the flange with the lens at infinity: drawn as short as it can be. */
  readonly isContradictory: boolean;
}

/** Camera and lens, the lens moved as a whole to a magnification; rim and flange stand where the barrel says. */
export function chainOf(given: Given, magnification: number, rimDiameter?: number): Chain {
  const {
    'focal-length': focalLength,
    'principal-separation': principalSeparation,
    'register-distance': registerDistance,
  } = given;
  const front = registerDistance + given['barrel-length'];
  const least = registerDistance - focalLength - principalSeparation;
  const frontPrincipalDepth = front - focalLength * (1 + magnification) - principalSeparation;
  const isContradictory = frontPrincipalDepth < least;
  const lens = {
    focalLength,
    principalSeparation,
    frontPrincipalDepth: Math.max(least, frontPrincipalDepth),
    pupilMagnification: given['pupil-magnification'],
    registerDistance,
    focusing: { by: 'unit', closestMagnification: magnification },
    apertureControl: 'lens',
  } as const;
  const rig = assembleRig([
    {
      part: 'camera',
      registerDistance,
      sensorWidth: given['sensor-width'],
      sensorHeight: (2 / 3) * given['sensor-width'],
    },
    {
      part: 'lens',
      lens,
      focusMagnification: magnification,
      fNumber: given['f-number'],
      ...(rimDiameter !== undefined && { rimDiameter }),
    },
  ]);
  return { positions: rigPositions(rig), isContradictory };
}
