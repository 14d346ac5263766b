import { exactRay, type OpenStop, type Place, type TracedRay } from './exact-trace.ts';
import { glassPupils } from './paraxial-trace.ts';
import type { Surface } from './prescription.ts';

/**
 * Rays from one point of the subject, evenly over the stop, traced exactly through the glass.
 *
 * Each is aimed so that it meets its place in the stop, first by the entrance pupil of paraxial rays, then by trial. Clear apertures
 * take what they take: what is missing beside the axis is vignetting.
 *
 * @param surfaces at one focus setting, in air
 * @param stop its surface and its diameter, mm
 * @param subject where the point is; *z* negative, −Infinity for parallel light from the direction *y*, then the tangent of its angle
 * @param count of rays, 2 or more
 * @returns the rays, from the lower rim of the stop to the upper. One that no aim brings to its place is lost where it misses the glass.
 * @throws OutOfRange for a lens that is telecentric towards the subject or the sensor
 *
 * Source: derived in [README](README.md#exact-rays).
 */
export function rayFan(
  surfaces: readonly Surface[],
  stop: OpenStop,
  subject: Place,
  count: number,
): readonly TracedRay[] {
  const { entrancePosition, entranceOverStop } = glassPupils(surfaces, stop.surface);
  // Without rims, so that a ray can be aimed through them: which of them cuts it off is found afterwards.
  const open = surfaces.map(({ radius, thickness, index }) => ({ radius, thickness, index }));
  const start = Math.min(0, entrancePosition) - stop.diameter;
  const aimedAt = (through: readonly Surface[], aim: number): TracedRay => {
    // Parallel light is met in a plane in front of the glass, wherever the pupil may lie.
    if (subject.z === -Infinity) {
      const y = aim - (entrancePosition - start) * subject.y;
      return exactRay(through, { z: start, y }, Math.atan(subject.y));
    }
    return exactRay(through, subject, Math.atan((aim - subject.y) / (entrancePosition - subject.z)));
  };
  const missedBy = (aim: number, wanted: number) => (aimedAt(open, aim).path[stop.surface + 1]?.y ?? NaN) - wanted;
  return Array.from({ length: count }, (_, step) => {
    const wanted = (stop.diameter / 2) * ((2 * step) / (count - 1) - 1);
    return aimedAt(surfaces, aimFor(wanted, entranceOverStop, stop.diameter, missedBy));
  });
}

/** Straightens the aim by what it missed, as the paraxial pupil scales it, until rounding. The first aim where a ray does not come that far. */
function aimFor(
  wanted: number,
  scale: number,
  diameter: number,
  missedBy: (aim: number, wanted: number) => number,
): number {
  const first = wanted * scale;
  let aim = first;
  for (let trial = 0; trial < 30; trial++) {
    const miss = missedBy(aim, wanted);
    if (!(Math.abs(miss) < diameter)) return first;
    if (Math.abs(miss) < 1e-12 * diameter) return aim;
    aim -= miss * scale;
  }
  return aim;
}

/** The share of a fan that gets through: 1 where nothing is in the way. */
export function shareThrough(fan: readonly TracedRay[]): number {
  return fan.filter(({ lost }) => lost === null).length / fan.length;
}
