import { focusDistance } from '#core/gaussian/focus-distance.formula.ts';
import { magnificationAtFocusDistance } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { fullStopFNumbers } from '#core/quantity/nominal.ts';
import type { RingMark } from './hand-layout.ts';
import { nearestOf } from './lens-in-hand.ts';

/** What a focus ring is marked and moved by. */
export interface FocusRing {
  readonly focalLength: number;
  readonly principalSeparation: number;
  /** The nearest that is marked on it, and the farthest, which stands for infinity, mm from the sensor. */
  readonly closest: number;
  readonly farthest: number;
}

/** From one end to the other, radians. */
const throwOfRing = 4.6;

/** Distances that a ring may be marked with, m, in the order in which they are written. */
const round = [1, 0.5, 2, 5, 0.7, 3, 0.3, 1.5, 0.4, 10, 0.6, 0.2, 20, 0.15, 0.1, 50, 0.8, 0.25, 0.35, 0.45];

/** The focal length's share by which the lens stands out at a distance. */
function travelShare(ring: FocusRing, distance: number): number {
  const { focalLength, principalSeparation } = ring;
  const nearest = nearestOf({ 'focal-length': focalLength, 'principal-separation': principalSeparation });
  if (distance <= nearest) return 1;
  return magnificationAtFocusDistance({ focalLength, principalSeparation, focusDistance: distance });
}

/** How far a ring has been turned from infinity, radians: evenly with the travel of the lens. */
export function turnOf(ring: FocusRing, distance: number): number {
  const [share, least, most] = [distance, ring.farthest, ring.closest].map((at) => travelShare(ring, at)) as [
    number,
    number,
    number,
  ];
  return most > least ? (throwOfRing * (share - least)) / (most - least) : 0;
}

/** The distance that a ring turned so far is set to, mm; between its ends. */
export function distanceAt(ring: FocusRing, turned: number): number {
  const { focalLength, principalSeparation, closest, farthest } = ring;
  if (turned <= 0) return farthest;
  if (turned >= throwOfRing) return closest;
  const [least, most] = [farthest, closest].map((at) => travelShare(ring, at)) as [number, number];
  const magnification = least + (turned / throwOfRing) * (most - least);
  return Math.min(farthest, Math.max(closest, focusDistance({ focalLength, principalSeparation, magnification })));
}

/** How far the ring turns for a millimetre of travel, radians. */
export function turnOfTravel(ring: FocusRing): number {
  const [least, most] = [ring.farthest, ring.closest].map((at) => travelShare(ring, at)) as [number, number];
  return throwOfRing / Math.max(1e-9, ring.focalLength * (most - least));
}

/** Both ends first, then round numbers. */
export function focusMarks(ring: FocusRing): readonly RingMark[] {
  const between = round.filter((metres) => 1000 * metres > 1.04 * ring.closest && 1000 * metres < ring.farthest);
  return [
    { text: '∞', turn: 0 },
    { text: String(Number((ring.closest / 1000).toPrecision(3))), turn: turnOf(ring, ring.closest) },
    ...between.map((metres) => ({ text: String(metres), turn: turnOf(ring, 1000 * metres) })),
  ];
}

/** An aperture ring turns as far for every stop, radians. */
export const turnOfStop = 0.34;

/** Whole stops of the trade's series from the widest to the smallest opening; the widest is marked as it is. */
export function apertureMarks(widest: number, smallest: number): readonly RingMark[] {
  const between = fullStopFNumbers().filter((mark) => mark > 1.08 * widest && mark < 1.02 * smallest);
  return [Number(widest.toPrecision(2)), ...between].map((mark) => ({
    text: String(mark),
    turn: turnOfStop * 2 * Math.log2(mark / widest),
  }));
}
