import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'source-size' | 'edge-height' | 'flash-distance';

/**
 * How wide the soft rim of a shadow is.
 *
 * penumbra = S_w y/(d − y)
 *
 * @param given.sourceSize *S_w*, width of the light, mm, above 0
 * @param given.edgeHeight *y*, from the lit surface up to the edge that casts the shadow, mm, above 0 and below *d*
 * @param given.flashDistance *d*, from the lit surface to the light, mm, above 0. Not from the edge.
 * @returns mm on the surface, from where the light begins to be covered to where none of it is seen
 * @throws OutOfRange for anything not finite and above zero, and for an edge as high as the light or higher
 *
 * Assumes a straight edge, a surface that faces the light, and light that travels in straight lines.
 * Source: derived in [README](README.md#penumbra) from similar triangles at the edge.
 *
 * @example penumbra({ sourceSize: 100, edgeHeight: 20, flashDistance: 220 }) // 10
 */
export function penumbra({ sourceSize, edgeHeight, flashDistance }: Named<Inputs>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('edge-height', edgeHeight);
  requirePositive('flash-distance', flashDistance);
  if (edgeHeight >= flashDistance)
    throw new OutOfRange('edge-height', edgeHeight, 'less than the distance of the light');
  return (sourceSize * edgeHeight) / (flashDistance - edgeHeight);
}

export const penumbraFormula = {
  gives: 'penumbra',
  from: ['source-size', 'edge-height', 'flash-distance'],
  tex: String.raw`\q{penumbra} = \frac{\q{source-size}\,\q{edge-height}}{\q{flash-distance} - \q{edge-height}}`,
  evaluate: penumbra,
  says: 'A shadow is sharp where its edge touches the ground and softens with the edge’s height.',
  source: 'derived in core/light/README.md#penumbra',
  checkedBy: ['across-a-soft-shadow', 'shadows-and-views', 'shadows-in-eclipses'],
  // The edge stands between the surface and the light.
  sample: { 'edge-height': [0.001, 90], 'flash-distance': [100, 20000] },
} as const satisfies Formula<Inputs>;
