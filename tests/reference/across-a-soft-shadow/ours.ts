import { penumbra } from '#core/light/penumbra.formula.ts';
import { seenPastEdge, seenPastNeedle, shareBeyond, type LightAbove } from '#core/light/seen-past-edge.ts';

type Given =
  | { sunAngle: number; edgeHeight: number }
  | { tankRadius: number; filled: number }
  | (LightAbove & { needle: number; places: readonly number[] });

/** So far off that its distance from the edge and from the ground are one. */
const farOff = 1e12;

export function ours(given: Given) {
  if ('sunAngle' in given)
    return {
      penumbra: penumbra({
        sourceSize: 2 * farOff * Math.tan(given.sunAngle / 2),
        flashDistance: farOff,
        edgeHeight: given.edgeHeight,
      }),
    };
  if ('filled' in given) return { share: 1 - shareBeyond(given.filled / given.tankRadius - 1) };
  return {
    pastEdge: given.places.map((place) => seenPastEdge(given, place)),
    pastNeedle: given.places.map((place) => seenPastNeedle(given, given.needle, place)),
  };
}
