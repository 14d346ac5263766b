import { requireCount } from '#core/quantity/count.ts';
import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import { FaultyPrescription } from './faulty-prescription.ts';
import { sag, type Surface } from './prescription.ts';

/** A point in the plane through the axis: *z* along it from the first vertex towards the sensor, *y* above it, mm. */
export interface Place {
  readonly z: number;
  readonly y: number;
}

/** Why a ray does not get through. */
export type RayLoss =
  /** it passes a surface by: no glass is there */
  | 'missed'
  /** the rim of a clear aperture is in its way */
  | 'clear aperture'
  /** the stop is */
  | 'stop'
  /** it is reflected inside the glass */
  | 'total reflection'
  /** the glass turns it round, away from the sensor */
  | 'turned back';

/** A ray drawn through real glass. */
export interface TracedRay {
  /** Where it starts, then where it meets each surface, as far as it gets; what stops it is met too. */
  readonly path: readonly Place[];
  /** Angle with the axis behind the last surface it passes, rad, positive upwards. */
  readonly angle: number;
  /** Where and why it ends; null where it gets through. */
  readonly lost: { readonly surface: number; readonly why: RayLoss } | null;
}

/** The stop, where it limits: its surface and its diameter, mm. */
export interface OpenStop {
  readonly surface: number;
  readonly diameter: number;
}

/** Lengths of rounding, mm. */
const rounding = 1e-9;

/**
 * One ray through real glass, exact: Snell's law at each surface, in the plane through the axis.
 *
 * n sin i = n' sin i'
 *
 * @param surfaces at one focus setting, in air in front
 * @param from where the ray starts, in front of the first surface; *z* negative
 * @param angle with the axis, rad, positive upwards, below a right angle
 * @param stop what the ray must pass besides the clear apertures, if given
 * @returns its path to the last surface, and on what it was lost where it does not get there
 * @throws OutOfRange for a start that is no place and an angle that is not below a right one; FaultyPrescription for glass that is none
 *
 * Source: Welford, Aberrations of Optical Systems, section 4.3 (from memory). Derived in [README](README.md#exact-rays).
 */
export function exactRay(surfaces: readonly Surface[], from: Place, angle: number, stop?: OpenStop): TracedRay {
  requireFinite('subject-width', from.y);
  requireFinite('subject-distance', from.z);
  if (!(Math.abs(angle) < Math.PI / 2)) throw new OutOfRange('incidence-angle', angle, 'below a right angle');
  const path: Place[] = [from];
  // Direction cosines along and across the axis, and the place of the vertex of the surface at hand.
  let along = Math.cos(angle);
  let across = Math.sin(angle);
  let vertex = 0;
  let { z, y } = from;
  let before = 1;
  for (let index = 0; index < surfaces.length; index++) {
    const { radius, thickness, index: behind, clearAperture = Infinity } = surfaces[index] as Surface;
    if (!(behind > 0 && behind < Infinity && Number.isFinite(thickness))) {
      throw new FaultyPrescription(index, `the glass behind it has the index ${behind} and is ${thickness} mm thick`);
    }
    const curvature = 1 / radius;
    const lostTo = (why: RayLoss): TracedRay => ({
      path,
      angle: Math.atan2(across, along),
      lost: { surface: index, why },
    });

    const atVertexPlane = y + ((vertex - z) * across) / along;
    if (stop?.surface === index && Math.abs(atVertexPlane) > stop.diameter / 2) {
      path.push({ z: vertex, y: atVertexPlane });
      return lostTo('stop');
    }
    const f = curvature * atVertexPlane ** 2;
    const g = along - curvature * atVertexPlane * across;
    const squareOfCosine = g ** 2 - curvature * f;
    if (squareOfCosine < 0) return lostTo('missed');
    const cosine = Math.sqrt(squareOfCosine);
    const run = f / (g + cosine);
    const bulge = run * along;
    // Beyond the rims that they have, surfaces cross: what lies behind a ray is not met any more. The plane of a stop bends nothing, and
    // cuts into a hollow surface before it.
    const isStopAlone = radius === Infinity && behind === before;
    if (!isStopAlone && !(vertex + bulge >= z - rounding)) return lostTo('missed');
    y = atVertexPlane + run * across;
    z = vertex + bulge;
    path.push({ z, y });
    if (Math.abs(y) > clearAperture / 2) return lostTo('clear aperture');

    const ratio = before / behind;
    const squareBehind = 1 - ratio ** 2 * (1 - squareOfCosine);
    if (squareBehind < 0) return lostTo('total reflection');
    const turn = Math.sqrt(squareBehind) - ratio * cosine;
    along = ratio * along + turn * (1 - curvature * bulge);
    across = ratio * across - turn * curvature * y;
    if (along <= 0) return lostTo('turned back');
    before = behind;
    if (index < surfaces.length - 1) vertex += thickness;
  }
  return { path, angle: Math.atan2(across, along), lost: null };
}

/** Where a traced ray is at *z*, straight on from its last surface, mm. Throws OutOfRange for a *z* or a ray that is none. */
export function heightAt({ path, angle }: TracedRay, z: number): number {
  const last = path.at(-1) as Place;
  return requireFinite('image-width', last.y + (z - last.z) * Math.tan(angle));
}

/**
 * Outline of a surface for drawing: *count* places from rim to rim of a diameter, the vertex at *vertex*; no farther out than the surface goes.
 *
 * @throws OutOfRange for a vertex, a radius or a diameter that is none; RangeError for fewer than two places
 */
export function outline({ radius }: Surface, vertex: number, diameter: number, count = 33): readonly Place[] {
  requireFinite('working-distance', vertex);
  if (!(Math.abs(radius) > 0)) throw new OutOfRange('focal-length', radius, 'a radius other than 0');
  requireCount('places', count, 2, 100_000);
  const half = Math.min(requirePositive('image-width', diameter) / 2, Math.abs(radius));
  return Array.from({ length: count }, (_, step) => {
    const y = half * ((2 * step) / (count - 1) - 1);
    return { z: vertex + sag(radius, y), y };
  });
}
