import type { Direction } from './lamp.ts';

/** An ellipsoid that faces the camera: middle and half axes, mm. */
export interface Ellipsoid {
  readonly middle: readonly [number, number, number];
  readonly axes: readonly [number, number, number];
}

/** How far a place is into an ellipsoid: 1 at its middle, 0 at its outline, negative beyond; its half axes in the picture alone. */
export function inside({ middle, axes }: Ellipsoid, x: number, y: number): number {
  const u = (x - middle[0]) / axes[0];
  const v = (y - middle[1]) / axes[1];
  return 1 - u * u - v * v;
}

/** The height of an ellipsoid's near side, mm; to be asked where it is. */
export function heightOfEllipsoid(ellipsoid: Ellipsoid, x: number, y: number): number {
  return ellipsoid.middle[2] + ellipsoid.axes[2] * Math.sqrt(Math.max(0, inside(ellipsoid, x, y)));
}

/** Where its near side is turned to at a place. */
export function normalOf(ellipsoid: Ellipsoid, x: number, y: number): Direction {
  const { middle, axes } = ellipsoid;
  const nx = (x - middle[0]) / axes[0] ** 2;
  const ny = (y - middle[1]) / axes[1] ** 2;
  const nz = Math.sqrt(Math.max(0, inside(ellipsoid, x, y))) / axes[2];
  const length = Math.hypot(nx, ny, nz) || 1;
  return [nx / length, ny / length, nz / length];
}

/** Distance to the outline, mm, near enough close to it. */
export function outlineOf({ axes }: Ellipsoid, share: number): number {
  return -0.5 * share * Math.min(axes[0], axes[1]);
}
