import { OutOfRange } from '#core/quantity/errors.ts';
import { degree } from '#core/quantity/units.ts';
import type { Scene } from './scene.ts';

/** Farther than that and widths, which stay as they are, would be 6 % too large. */
export const mostTurned = 20 * degree;

/**
 * A scene whose subject is turned about the upright line through its middle, its right half towards the camera: every height grows by x tan τ.
 * What is behind it, its last surface, stays where it is.
 *
 * @param scene as its subject draws it; it is left as it is
 * @param turned *τ*, rad, from 0 to {@link mostTurned}
 * @returns the same scene for no turn
 * @throws OutOfRange for an angle outside
 *
 * Assumes a small turn: widths are kept, which a turn makes narrower by its cosine, and no side comes into view that was hidden.
 * Source: a plane through the axis of the turn rises by the tangent. See [README](README.md#turned).
 */
export function turnedScene(scene: Scene, turned: number): Scene {
  if (!(turned >= 0 && turned <= mostTurned * (1 + 1e-9)))
    throw new OutOfRange('subject-tilt', turned, 'from 0 to 20°, or a picture would show what a turn hides');
  if (turned === 0) return scene;
  const { columns, pitch, surfaces } = scene;
  const slope = Math.tan(turned) * pitch;
  let depth = 0;
  const rising = surfaces.map((surface, index) => {
    if (index === surfaces.length - 1) return surface;
    const height = surface.height.map((here, at) => here + slope * ((at % columns) - (columns - 1) / 2));
    for (let at = 0; at < height.length; at++) {
      if (surface.coverage[at]! > 0 && height[at]! > depth) depth = height[at]!;
    }
    return { ...surface, height };
  });
  return { ...scene, depth: Math.max(scene.depth, depth), surfaces: rising };
}

/** The largest height that a subject, mm wide and deep, may have once it is turned. */
export function turnedDepth(
  { width, depth }: { readonly width: number; readonly depth: number },
  turned: number,
): number {
  return depth + (width / 2) * Math.tan(turned);
}
