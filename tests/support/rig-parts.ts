import fc from 'fast-check';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { valueIn } from './sample.ts';

/** Parts that tests build chains from; pupils are never equal, for much is right at P = 1 by chance. */
export const camera: Part = { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 };

export const ring = (extension: number): Part => ({ part: 'ring', extension });

export const lens50: Lens = {
  focalLength: 50,
  principalSeparation: -4,
  frontPrincipalDepth: 22,
  pupilMagnification: 1.2,
  registerDistance: 44,
  focusing: { by: 'unit', closestMagnification: 0.15 },
  apertureControl: 'camera',
};

export const lens28: Lens = {
  focalLength: 28,
  principalSeparation: 12,
  frontPrincipalDepth: 34,
  pupilMagnification: 1.5,
  registerDistance: 46.5,
  focusing: { by: 'unit', closestMagnification: 0.1 },
  apertureControl: 'lens',
};

/** The lens mounted, at f/8 and infinity unless said otherwise. */
export const on = (lens: Lens, set: { at?: number; fNumber?: number; reversed?: boolean } = {}): Part => ({
  part: 'lens',
  lens,
  focusMagnification: set.at ?? 0,
  fNumber: set.fNumber ?? 8,
  reversed: set.reversed ?? false,
});

/** Lenses that are focused as a whole, from all over what is built, pupils from 0.3 to 3. */
export const unitLenses: fc.Arbitrary<Lens> = fc
  .record({
    focalLength: valueIn([10, 300]),
    separation: valueIn([-0.3, 0.6]),
    barrel: valueIn([5, 250]),
    pupilMagnification: valueIn([0.3, 3]),
    registerDistance: valueIn([16, 60]),
  })
  .map(({ focalLength, separation, barrel, pupilMagnification, registerDistance }) => ({
    focalLength,
    principalSeparation: separation * focalLength,
    // Rim to flange, flange to sensor, less what lies from H to the sensor at infinity.
    frontPrincipalDepth: barrel + registerDistance - focalLength * (1 + separation),
    pupilMagnification,
    registerDistance,
    focusing: { by: 'unit', closestMagnification: 1 } as const,
    apertureControl: 'lens' as const,
  }));
