import { requireCount } from '#core/quantity/count.ts';
import { requirePositive } from '#core/quantity/errors.ts';
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
 * @returns the rays, from the lower rim of the stop to the upper. One that no aim brings to its place is lost: in the glass on its way there, or at the stop.
 * @throws OutOfRange for a lens that is telecentric towards the subject or the sensor, for a stop without width; RangeError for fewer than two rays
 *
 * Source: derived in [README](README.md#exact-rays).
 */
export function rayFan(
  surfaces: readonly Surface[],
  stop: OpenStop,
  subject: Place,
  count: number,
): readonly TracedRay[] {
  requirePositive('entrance-pupil', stop.diameter);
  requireCount('rays', count, 2, 10_000);
  const { entrancePosition, entranceOverStop } = glassPupils(surfaces, stop.surface);
  // Without rims, so that a ray can be aimed through them: which of them cuts it off is found afterwards.
  const open = surfaces.map(({ radius, thickness, index }) => ({ radius, thickness, index }));
  const start = Math.min(0, entrancePosition) - stop.diameter;
  const aimedAt = (through: readonly Surface[], aim: number, limit?: OpenStop): TracedRay => {
    // Parallel light is met in a plane in front of the glass, wherever the pupil may lie.
    if (subject.z === -Infinity) {
      const y = aim - (entrancePosition - start) * subject.y;
      return exactRay(through, { z: start, y }, Math.atan(subject.y), limit);
    }
    return exactRay(through, subject, Math.atan((aim - subject.y) / (entrancePosition - subject.z)), limit);
  };
  const missedBy = (aim: number, wanted: number) => (aimedAt(open, aim).path[stop.surface + 1]?.y ?? NaN) - wanted;
  const nowhere = { surface: stop.surface, diameter: 0 };
  return Array.from({ length: count }, (_, step) => {
    const wanted = (stop.diameter / 2) * ((2 * step) / (count - 1) - 1);
    const first = wanted * entranceOverStop;
    const missed = (aim: number) => missedBy(aim, wanted);
    const aim =
      aimByTrial(first, entranceOverStop, stop.diameter, missed) ??
      aimBySearch(first, entranceOverStop * stop.diameter, missed);
    return aim === null ? aimedAt(surfaces, first, nowhere) : aimedAt(surfaces, aim);
  });
}

/** Straightens the aim by what it missed, as the paraxial pupil scales it, until rounding; null where that leads nowhere. */
function aimByTrial(first: number, scale: number, diameter: number, missedBy: (aim: number) => number): number | null {
  let aim = first;
  for (let trial = 0; trial < 30; trial++) {
    const miss = missedBy(aim);
    if (!(Math.abs(miss) < diameter)) return null;
    if (Math.abs(miss) < 1e-12 * diameter) return aim;
    aim -= miss * scale;
  }
  return Math.abs(missedBy(aim)) < 1e-9 * diameter ? aim : null;
}

/** Aims tried to either side of the first, and how far apart: in shares of the entrance pupil. */
const tries = 400;
const apart = 0.02;

/**
 * The aim nearest to *first* that hits, for rays so steep that the paraxial pupil is no guide: between two neighbours, traced both,
 * that miss to different sides. Null where there are none.
 */
function aimBySearch(first: number, pupil: number, missedBy: (aim: number) => number): number | null {
  const middle = missedBy(first);
  const before = { below: { aim: first, miss: middle }, above: { aim: first, miss: middle } };
  for (let step = 1; step <= tries; step++) {
    for (const side of ['above', 'below'] as const) {
      const aim = first + (side === 'above' ? step : -step) * apart * pupil;
      const here = { aim, miss: missedBy(aim) };
      const crosses = here.miss <= 0 !== before[side].miss <= 0;
      if (crosses && Number.isFinite(here.miss) && Number.isFinite(before[side].miss)) {
        return halved(before[side], here, missedBy);
      }
      before[side] = here;
    }
  }
  return null;
}

interface Tried {
  readonly aim: number;
  readonly miss: number;
}

function halved(one: Tried, other: Tried, missedBy: (aim: number) => number): number | null {
  let [low, high] = [one, other];
  for (let step = 0; step < 60; step++) {
    const aim = (low.aim + high.aim) / 2;
    const middle = { aim, miss: missedBy(aim) };
    // A ray in between that does not come that far: the two do not belong together.
    if (!Number.isFinite(middle.miss)) return null;
    if (middle.miss <= 0 === low.miss <= 0) low = middle;
    else high = middle;
  }
  return high.aim;
}

/** The share of a fan that gets through: 1 where nothing is in the way. */
export function shareThrough(fan: readonly TracedRay[]): number {
  return fan.filter(({ lost }) => lost === null).length / fan.length;
}
