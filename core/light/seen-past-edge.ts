import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/** A round light, and below its middle something at *y* above a lit surface. */
export type LightAbove = Named<'source-size' | 'edge-height' | 'flash-distance'>;

/**
 * What of a disc lies on one side of a straight line across it.
 *
 * share = (arccos q − q √(1 − q²))/π
 *
 * @param offset *q*, of the line from the disc's middle, in radii; beyond ±1 the line misses the disc. ±Infinity is allowed.
 * @returns the share of the disc's area that lies farther out than the line, 1 to 0
 *
 * Source: the area of a segment, as for liquid in a lying tank.
 */
export function shareBeyond(offset: number): number {
  if (!(offset > -1)) return 1;
  if (offset >= 1) return 0;
  return (Math.acos(offset) - offset * Math.sqrt(1 - offset * offset)) / Math.PI;
}

/**
 * How much of a round light is seen from a place on a surface, past a straight edge above it: across the penumbra it grows from 0 to 1.
 *
 * @param given.sourceSize *S_w*, diameter of the light, mm, above 0
 * @param given.edgeHeight *y*, of the edge above the surface, mm, above 0 and below *d*
 * @param given.flashDistance *d*, of the light above the surface, mm, above 0
 * @param place on the surface, mm from below the edge, the lit side positive
 * @returns the share of the light's area that is seen, 0 to 1
 * @throws OutOfRange for anything not finite and above zero, and for an edge at the light or beyond it
 *
 * Assumes a light parallel to the surface, its middle above the edge. Counts area: what light comes from it also goes with the slant.
 * Source: derived in [README](README.md#across-the-penumbra).
 */
export function seenPastEdge({ sourceSize, edgeHeight, flashDistance }: LightAbove, place: number): number {
  requireShadow({ sourceSize, edgeHeight, flashDistance });
  requireFinite('edge-height', place);
  return shareBeyond((-2 * place * (flashDistance - edgeHeight)) / (edgeHeight * sourceSize));
}

/**
 * The same past a needle, which hides a band across the light: past its one side is seen, or past its other.
 *
 * @param width of the needle, mm, above 0
 * @param place on the surface, mm from below the needle's middle
 * @returns the share of the light's area that is seen, 0 to 1. 0 only where the needle looks at least as wide as the light.
 * @throws and assumes what {@link seenPastEdge} does
 */
export function seenPastNeedle(given: LightAbove, width: number, place: number): number {
  requirePositive('subject-width', width);
  return seenPastEdge(given, place - shadowSide(given, width)) + seenPastEdge(given, -place - shadowSide(given, width));
}

/** Where the penumbra of a needle's side has its middle: half the shadow that a point of light would throw, mm. */
export function shadowSide({ edgeHeight, flashDistance }: LightAbove, width: number): number {
  return ((width / 2) * flashDistance) / (flashDistance - edgeHeight);
}

function requireShadow({ sourceSize, edgeHeight, flashDistance }: LightAbove): void {
  requirePositive('source-size', sourceSize);
  requirePositive('edge-height', edgeHeight);
  requirePositive('flash-distance', flashDistance);
  if (edgeHeight >= flashDistance) throw new OutOfRange('edge-height', edgeHeight, 'below the light');
}
