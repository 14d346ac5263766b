import { ImpossibleChain } from './impossible-chain.ts';
import type { PlacedPupil } from './element-points.ts';
import type { Element, Rig } from './rig.ts';

/** A point of a ray: *z* from the sensor towards the subject, *y* from the axis, mm. */
export interface RayPoint {
  readonly z: number;
  readonly y: number;
}

/** A ray from the sensor to the subject: straight between its points, from H' to H at one height. */
export interface RayPath {
  /** From the sensor to the sharp plane, or to the foremost surface or principal plane where there is none. */
  readonly points: readonly RayPoint[];
  /** How it runs in front of everything, mm up for each mm towards the subject. */
  readonly slope: number;
}

/** Beyond this a pupil is at infinity: rounding. */
const infinity = 1e-9;

/**
 * The marginal and the chief ray of a rig, and the pupils that they show.
 *
 * marginal: slope 1/(2 N_w) from the middle of the sensor. chief: through the middle of the limiting stop, b times the ray that starts along
 * the axis less a times the one that starts in the middle, a and b their heights there
 */
export function rigRays(
  rig: Rig,
  sharpPlane: number | null,
): { marginal: RayPath; chief: RayPath; entrancePupil: PlacedPupil | null; exitPupil: PlacedPupil | null } {
  let widest = 0;
  let [a, b] = [0, 0];
  const note = ({ exitDepth, exitRadius }: Element, parallel: Ray, axial: Ray) => {
    const height = axial.y - exitDepth * axial.slope;
    const width = Math.abs(height) / exitRadius;
    if (!(width > widest)) return;
    widest = width;
    a = parallel.y - exitDepth * parallel.slope;
    b = height;
  };
  const parallel = walk(rig, { y: 1, slope: 0 }, sharpPlane);
  const axial = walk(rig, { y: 0, slope: 1 }, sharpPlane);
  rig.elements.forEach((element, index) => note(element, parallel.atElements[index]!, axial.atElements[index]!));
  if (widest === 0) {
    throw new ImpossibleChain(rig.parts.length - 1, 'stop', 'the only stop stands in the picture itself');
  }
  const start = -rig.camera.sensorWidth / 2;
  const marginal = sum(axial.path, 1 / widest, parallel.path, 0);
  const chief = sum(parallel.path, start, axial.path, (-start * a) / b);
  // Both are seen along the chief ray: where it meets the axis, as wide as the marginal ray is high there.
  const pupil = (slope: number, at: RayPoint, marginalSlope: number, marginalAt: RayPoint): PlacedPupil | null => {
    if (Math.abs(slope * rig.length) < infinity * Math.abs(start)) return null;
    const run = -at.y / slope;
    return { at: at.z + run, diameter: 2 * Math.abs(marginalAt.y + run * marginalSlope) };
  };
  return {
    marginal,
    chief,
    entrancePupil: pupil(chief.slope, chief.points.at(-1)!, marginal.slope, marginal.points.at(-1)!),
    exitPupil: pupil((-start * a) / b, { z: 0, y: start }, 1 / widest, { z: 0, y: 0 }),
  };
}

/** A ray on its way, slope counted towards the subject. */
interface Ray {
  readonly y: number;
  readonly slope: number;
}

/** Walks a ray from the sensor to the subject; also tells height and slope as it comes to each H'. */
function walk({ elements, length }: Rig, start: Ray, sharpPlane: number | null): { path: RayPath; atElements: Ray[] } {
  const points: RayPoint[] = [{ z: 0, y: start.y }];
  const atElements: Ray[] = [];
  let { y, slope } = start;
  let z = 0;
  for (const { gap, power, separation } of elements) {
    y += gap * slope;
    z += gap;
    points.push({ z, y });
    atElements.push({ y, slope });
    slope -= power * y;
    if (separation !== 0) points.push({ z: (z += separation), y });
  }
  const end = sharpPlane ?? Math.max(length, z);
  points.push({ z: end, y: y + (end - z) * slope });
  return { path: { points, slope }, atElements };
}

/** Rays add up: near the axis everything is linear. */
function sum(one: RayPath, times: number, other: RayPath, otherTimes: number): RayPath {
  return {
    points: one.points.map(({ z, y }, index) => ({ z, y: times * y + otherTimes * other.points[index]!.y })),
    slope: times * one.slope + otherTimes * other.slope,
  };
}

/**
 * Any ray of the picture: from a place on the sensor through a place in the limiting stop.
 *
 * field × chief ray + aperture × marginal ray
 *
 * @param positions of the rig
 * @param through.field 1 for the end of the sensor's width from which the chief ray comes, 0 for its middle, −1 for the other end
 * @param through.aperture 0 for the middle of the stop, 1 and −1 for its rims
 * @returns its path, from the sensor on
 *
 * Source: derived in [README](README.md#where-everything-stands).
 */
export function rayThrough(
  { chief, marginal }: { readonly chief: RayPath; readonly marginal: RayPath },
  { field, aperture }: { readonly field: number; readonly aperture: number },
): RayPath {
  return sum(chief, field, marginal, aperture);
}
