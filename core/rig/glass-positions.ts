import { heightAt, outline, type RayLoss } from './exact-trace.ts';
import { ImpossibleChain } from './impossible-chain.ts';
import { glassPoints, glassPupils } from './paraxial-trace.ts';
import type { RigPositions } from './positions.ts';
import { prescriptionInUse } from './prescription-in-use.ts';
import { rayFan } from './ray-fan.ts';
import type { RayPoint } from './ray-paths.ts';
import { reversedPrescription } from './reversed-prescription.ts';

/** The glass of one lens of a chain where it stands, mm from the sensor towards the subject. */
export interface PlacedGlass {
  /** Place of the lens in the chain. */
  readonly part: number;
  /** From the subject to the sensor, as light meets them. */
  readonly surfaces: readonly PlacedSurface[];
  readonly stop: { readonly at: number; readonly radius: number };
}

export interface PlacedSurface {
  readonly vertex: number;
  /** From rim to rim. */
  readonly outline: readonly RayPoint[];
  /** Refractive index behind it, on the side of the sensor; 1 in air. */
  readonly index: number;
}

/** A ray through real glass, from the subject to the sensor or to where it is lost. */
export interface PlacedRay {
  readonly points: readonly RayPoint[];
  readonly lost: RayLoss | null;
}

/** Surfaces as they stand in the chain, and what the stop of that chain measures. */
function mountedGlass({ parts, elements }: RigPositions, index: number) {
  const mounted = parts[index]?.part;
  const own = elements.find(({ part }) => part === index);
  if (mounted?.part !== 'lens' || !own?.points) {
    throw new ImpossibleChain(index, mounted?.part ?? 'nothing', 'only a lens has a prescription');
  }
  const { prescription } = mounted.lens;
  if (!prescription) throw new ImpossibleChain(index, 'lens', 'its surfaces are not known');
  const inUse = prescriptionInUse(prescription, mounted.focusMagnification);
  const asBuilt = { surfaces: inUse.surfaces, stop: prescription.stop };
  const { surfaces, stop } = mounted.reversed ? reversedPrescription(asBuilt) : asBuilt;
  const firstVertex = own.points.frontPrincipal + glassPoints(surfaces).frontPrincipal;
  // The exit pupil is known of every lens; the entrance pupil may stand at infinity.
  const stopDiameter = (own.exitPupil?.diameter ?? 0) / glassPupils(surfaces, stop).exitOverStop;
  return { surfaces, stop, firstVertex, stopDiameter };
}

/**
 * The glass of a lens of the chain, surface by surface, where it stands.
 *
 * The first vertex stands in front of H as far as the surfaces say, at the lens's setting; turned round where the lens is
 *
 * @param positions of the rig
 * @param index place in the chain of a lens that carries its prescription
 * @returns surfaces with their outlines, and the stop as wide as the lens is stopped down; rims as wide as stated, else as the light at
 *   the widest of its own pupils asks
 * @throws ImpossibleChain where no lens of known surfaces stands at that place; OutOfRange for a telecentric lens
 *
 * Source: derived in [README](README.md#where-everything-stands).
 */
export function glassPositions(positions: RigPositions, index: number): PlacedGlass {
  const { surfaces, stop, firstVertex, stopDiameter } = mountedGlass(positions, index);
  const { entrancePupil, exitPupil } = positions.elements.find(({ part }) => part === index)!;
  const asked = 1.3 * Math.max(stopDiameter, entrancePupil?.diameter ?? 0, exitPupil?.diameter ?? 0);
  let vertex = 0;
  const vertices = surfaces.map(({ thickness }) => {
    const here = vertex;
    vertex += thickness;
    return here;
  });
  return {
    part: index,
    surfaces: surfaces.map((surface, place) => ({
      vertex: firstVertex - vertices[place]!,
      index: surface.index,
      outline: outline(surface, vertices[place]!, surface.clearAperture ?? asked).map(({ z, y }) => ({
        z: firstVertex - z,
        y,
      })),
    })),
    stop: { at: firstVertex - vertices[stop]!, radius: stopDiameter / 2 },
  };
}

/**
 * Rays traced exactly through the glass of the one lens of a chain, from a point of the field over the stop.
 *
 * @param positions of a rig whose only glass is that lens
 * @param index its place in the chain; the lens carries its prescription
 * @param fan.field place in the field, from the middle (0) to the end of its width (1 and −1), as for `rayThrough`
 * @param fan.count of rays, 2 or more
 * @returns the rays from the subject on, parallel light at infinity, to the sensor or to where the glass or its rims lose them
 * @throws ImpossibleChain as `glassPositions` does, and where other glass stands in the chain, or nothing in front of it is sharp; what `rayFan` throws
 *
 * Source: derived in [README](README.md#where-everything-stands).
 */
export function glassRays(
  positions: RigPositions,
  index: number,
  fan: { readonly field: number; readonly count: number },
): readonly PlacedRay[] {
  const { elements, sharpPlane, solved, chief } = positions;
  if (elements.length !== 1 || solved.sharpPlane === 'inside' || solved.sharpPlane === 'nowhere') {
    throw new ImpossibleChain(index, 'lens', 'exact rays need its glass alone, and a subject in front of it');
  }
  const { surfaces, stop, firstVertex, stopDiameter } = mountedGlass(positions, index);
  const subject =
    sharpPlane === null
      ? { z: -Infinity, y: -fan.field * chief.slope }
      : { z: firstVertex - sharpPlane, y: fan.field * chief.points.at(-1)!.y };
  return rayFan(surfaces, { surface: stop, diameter: stopDiameter }, subject, fan.count).map((ray) => {
    const path = ray.lost ? ray.path : [...ray.path, { z: firstVertex, y: heightAt(ray, firstVertex) }];
    return { points: path.map(({ z, y }) => ({ z: firstVertex - z, y })), lost: ray.lost?.why ?? null };
  });
}
