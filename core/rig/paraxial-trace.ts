import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription } from './faulty-prescription.ts';
import { glassMatrix } from './glass-matrix.ts';
import type { Surface } from './prescription.ts';

/** Where a lens has its focal and principal points, mm; in air. Positive is towards the sensor. */
export interface GlassPoints {
  /** *f*; negative for a lens that spreads light. */
  readonly focalLength: number;
  /** From the first vertex to F, negative where F lies in front of it. */
  readonly frontFocus: number;
  /** From the last vertex to F': the back focus. */
  readonly backFocus: number;
  /** From the first vertex to H. */
  readonly frontPrincipal: number;
  /** From the last vertex to H', negative where H' lies within the lens. */
  readonly rearPrincipal: number;
  /** *HH'*. */
  readonly principalSeparation: number;
  /** From the first vertex to the last. */
  readonly track: number;
}

/** Pupils of a lens. Positive is towards the sensor. */
export interface GlassPupils {
  /** From the first vertex to the entrance pupil, mm. */
  readonly entrancePosition: number;
  /** Its diameter over that of the stop. */
  readonly entranceOverStop: number;
  /** From the last vertex to the exit pupil, mm. */
  readonly exitPosition: number;
  readonly exitOverStop: number;
  /** *P*. */
  readonly pupilMagnification: number;
}

/**
 * The cardinal points of a lens given by its surfaces.
 *
 * [[A, B], [C, D]] from the first vertex to the last: f = −1/C, F at D/C, F' at −A/C, H at F + f, H' at F' − f
 *
 * @param surfaces at one focus setting, in air
 * @returns focal length and points, mm
 * @throws OutOfRange for a lens without focal length, such as a flat plate, and for surfaces that are none: endless gaps, radii or indices that are no numbers
 *
 * Assumes paraxial rays. Source: Welford, Aberrations of Optical Systems, ch. 3 (from memory). Derived in
 * [README](README.md#surface-by-surface).
 */
export function glassPoints(surfaces: readonly Surface[]): GlassPoints {
  const { A, C, D } = glassMatrix(surfaces, 0, surfaces.length, 1);
  if (!(Math.abs(C) >= 1e-12 && [A, C, D].every(Number.isFinite))) {
    throw new OutOfRange('focal-length', Math.abs(1 / C), 'a lens of known surfaces that bends light on the whole');
  }
  const focalLength = -1 / C;
  const frontFocus = D / C;
  const backFocus = -A / C;
  const track = surfaces.slice(0, -1).reduce((sum, { thickness }) => sum + thickness, 0);
  const frontPrincipal = frontFocus + focalLength;
  const rearPrincipal = backFocus - focalLength;
  return {
    focalLength,
    frontFocus,
    backFocus,
    frontPrincipal,
    rearPrincipal,
    principalSeparation: track + rearPrincipal - frontPrincipal,
    track,
  };
}

/**
 * The pupils of a lens given by its surfaces: its stop imaged through what stands before it, and through what stands behind.
 *
 * entrance pupil at B/A, 1/A as wide, of the part before the stop; exit pupil at −B/D, 1/D as wide, of the part behind; P = A/D
 *
 * @param surfaces at one focus setting, in air
 * @param stop the surface in whose vertex plane the stop stands, before its glass
 * @returns places and widths, mm and shares of the stop
 * @throws OutOfRange where a pupil lies at infinity: the lens is telecentric, and for surfaces that are none; FaultyPrescription for a stop where no surface is
 *
 * Assumes paraxial rays. Source: as {@link glassPoints}.
 */
export function glassPupils(surfaces: readonly Surface[], stop: number): GlassPupils {
  if (!surfaces[stop]) throw new FaultyPrescription(null, `the stop is at surface ${stop}, of ${surfaces.length}`);
  const before = glassMatrix(surfaces, 0, stop, 1);
  const behind = glassMatrix(surfaces, stop, surfaces.length, 1);
  const known = [before.A, before.B, behind.B, behind.D].every(Number.isFinite);
  if (!(known && Math.abs(before.A) >= 1e-12 && Math.abs(behind.D) >= 1e-12)) {
    throw new OutOfRange(
      'entrance-pupil',
      known ? Infinity : NaN,
      'a stop that is not in the focal plane of what stands before or behind it',
    );
  }
  return {
    entrancePosition: before.B / before.A,
    entranceOverStop: 1 / Math.abs(before.A),
    exitPosition: -behind.B / behind.D,
    exitOverStop: 1 / Math.abs(behind.D),
    pupilMagnification: Math.abs(before.A / behind.D),
  };
}
