import type { PrincipalPoints } from './element-points.ts';
import type { RayPath, RayPoint } from './ray-paths.ts';

/** What the ruler's rays go by; `RigPositions` has it. */
interface Constructed {
  readonly whole: PrincipalPoints | null;
  readonly sharpPlane: number | null;
  readonly signedMagnification: number | null;
}

/**
 * The rays by which an image is found with a ruler: parallel to the axis and through F', through H and H', through F and parallel.
 *
 * @param positions of the rig
 * @param height of the subject's point above the axis, mm; without a sharp plane the height at which parallel light comes in
 * @returns three rays that meet in the image; without a sharp plane three parallel ones, which meet in F'; none where the rig has no principal planes
 *
 * Source: derived in [README](README.md#where-everything-stands).
 */
export function constructionRays(
  { whole, sharpPlane, signedMagnification }: Constructed,
  height: number,
): readonly RayPath[] {
  if (!whole) return [];
  const { rearPrincipal, frontPrincipal, focalLength } = whole;
  const through = (atSensor: number, atPlanes: number, end: RayPoint): RayPath => ({
    points: [{ z: 0, y: atSensor }, { z: rearPrincipal, y: atPlanes }, { z: frontPrincipal, y: atPlanes }, end],
    slope: sharpPlane === null ? 0 : (end.y - atPlanes) / (end.z - frontPrincipal),
  });
  if (sharpPlane === null || !signedMagnification) {
    return [1, 0, -1].map((side) => {
      const y = side * height;
      return through(y * (1 - rearPrincipal / focalLength), y, { z: frontPrincipal, y });
    });
  }
  const image = height * signedMagnification;
  return [height, 0, image].map((atPlanes) => through(image, atPlanes, { z: sharpPlane, y: height }));
}
