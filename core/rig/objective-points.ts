import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Objective } from './part.ts';

/** A microscope objective as a lens: H and H' together, the stop in the rear focal plane. */
export interface ObjectivePoints {
  readonly focalLength: number;
  /** From the principal planes back to the shoulder, mm; negative where they lie behind it. */
  readonly shoulderDepth: number;
  /** From the tip back to the principal planes, mm. */
  readonly frontPrincipalDepth: number;
  /** Diameter of the stop, which is the beam that leaves an infinity objective, mm. */
  readonly beam: number;
}

/**
 * What the engraving of a microscope objective says about its cardinal points.
 *
 * f_obj = (design tube focal length)/M for an infinity objective, beam = 2 f_obj NA
 *
 * @param objective as engraved; for a finite one *f* follows from its parfocal and image distances at its own magnification *M*
 * @returns focal length, place of the principal planes and beam. The aperture counts as a sine, so that 2 f NA is the beam
 *   itself (Abbe's sine condition) and not its paraxial stand-in.
 * @throws OutOfRange for what is not finite and above zero, an aperture of 1 or more, which needs oil, or a tip behind the shoulder
 *
 * Assumes HH' = 0, which makers do not print, and a stop in the rear focal plane.
 * Source: Murphy, Fundamentals of Light Microscopy and Electronic Imaging (from memory). Derived in [README](README.md#objectives).
 *
 * @example objectivePoints({ part: 'objective', objectiveMagnification: 10, numericalAperture: 0.25, workingDistance: 10, design: { tubeFocalLength: 200 }, parfocalDistance: 45 }).beam // 10
 */
export function objectivePoints(objective: Objective): ObjectivePoints {
  const { objectiveMagnification: engraved, numericalAperture, design, parfocalDistance } = objective;
  requirePositive('objective-magnification', engraved);
  requirePositive('subject-distance', parfocalDistance);
  const { workingDistance } = objective;
  if (!(workingDistance >= 0 && workingDistance < parfocalDistance)) {
    throw new OutOfRange(
      'working-distance',
      workingDistance,
      `from 0 to below the parfocal distance, ${parfocalDistance}`,
    );
  }
  if (!(numericalAperture > 0 && numericalAperture < 1)) {
    throw new OutOfRange('numerical-aperture', numericalAperture, 'above 0 and below 1, in air');
  }
  const infinity = 'tubeFocalLength' in design;
  const focalLength = infinity
    ? requirePositive('tube-focal-length', design.tubeFocalLength) / engraved
    : (parfocalDistance + requirePositive('image-distance', design.imageDistance)) / (2 + engraved + 1 / engraved);
  const specimen = infinity ? focalLength : focalLength * (1 + 1 / engraved);
  return {
    focalLength,
    shoulderDepth: parfocalDistance - specimen,
    frontPrincipalDepth: specimen - objective.workingDistance,
    beam: 2 * focalLength * numericalAperture,
  };
}
