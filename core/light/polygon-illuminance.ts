import { requirePlace } from './require.ts';
import { cross, dot, length, sum, type Vector } from './vector.ts';

/** A small piece of surface: where it is, mm, and the direction it faces, of length one. */
export interface SurfaceElement {
  readonly point: Vector;
  readonly normal: Vector;
}

/**
 * The illuminance that a flat, evenly bright polygon throws on a small piece of surface, for luminance 1. Exact.
 *
 * E/L_v = ½ Σ β_i n · Γ_i, with β_i the angle that the i-th edge fills as seen from the surface and Γ_i the direction
 * square to that edge and to the line of sight
 *
 * @param corners mm, in order, turning so that the first edge × the second points away from the surface
 * @param element the lit piece; it must lie before the polygon's bright side
 * @returns lx for 1 cd/m², 0 to π. What lies behind the element's own horizon gives nothing.
 * @throws OutOfRange for a place that is none
 *
 * Source: J. H. Lambert, Photometria (1760); Baum, Rushmeier and Winget, SIGGRAPH 1989 (from memory). Derived in
 * [README](README.md#polygon).
 */
export function polygonIlluminance(corners: readonly Vector[], { point, normal }: SurfaceElement): number {
  for (const place of [point, normal, ...corners]) requirePlace(place);
  const seen = aboveHorizon(
    corners.map((corner) => sum(corner, point, -1)),
    normal,
  );
  const total = seen.reduce(
    (terms, from, index) => terms + edgeTerm(from, seen[(index + 1) % seen.length]!, normal),
    0,
  );
  return Math.max(0, total / 2);
}

/** What one edge adds, from corner to corner as seen from the element. */
export function edgeTerm(from: Vector, to: Vector, normal: Vector): number {
  const square = cross(from, to);
  const size = length(square);
  return size > 0 ? (Math.atan2(size, dot(from, to)) * dot(square, normal)) / size : 0;
}

/** The part of a polygon that stands above the plane through the origin with the given normal. */
function aboveHorizon(corners: readonly Vector[], normal: Vector): readonly Vector[] {
  return corners.flatMap((to, index) => {
    const from = corners.at(index - 1)!;
    const [before, after] = [dot(from, normal), dot(to, normal)];
    const crossing = before > 0 !== after > 0 ? [sum(from, sum(to, from, -1), before / (before - after))] : [];
    return after > 0 ? [...crossing, to] : crossing;
  });
}
