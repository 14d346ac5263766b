import { OutOfRange } from '#core/quantity/errors.ts';

/** A point or direction in space: x to the right, y up, z towards the camera; points in mm. */
export type Vector = readonly [x: number, y: number, z: number];

/** *a* + *factor* · *b*. */
export function sum(a: Vector, b: Vector, factor = 1): Vector {
  return [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]];
}

/** *factor* · *a*. */
export function scaled(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

/** The inner product: of two directions the cosine of the angle between them. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** The outer product: square to both, by the right-hand rule. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** How long a vector is. */
export function length(a: Vector): number {
  return Math.hypot(...a);
}

/**
 * The direction of a vector, of length one.
 *
 * @throws OutOfRange for a vector that has none: of length zero, or not finite
 */
export function direction(a: Vector): Vector {
  const size = length(a);
  if (!(size > 0 && size < Infinity)) {
    throw new OutOfRange('incidence-angle', size, 'the angle of a direction, whose length is finite and above 0');
  }
  return scaled(a, 1 / size);
}

/** What of *a* is square to the direction *axis*, as a direction; any such direction where *a* runs along the axis. */
export function across(axis: Vector, a: Vector): Vector {
  const rest = sum(a, axis, -dot(a, axis));
  // Rounding alone leaves this much of a vector along the axis.
  if (length(rest) <= 1e-15 * length(a)) return direction(cross(axis, Math.abs(axis[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
  // Once more: of a vector almost along the axis, rounding leaves part of the axis in the rest.
  const square = direction(rest);
  return direction(sum(square, axis, -dot(square, axis)));
}
