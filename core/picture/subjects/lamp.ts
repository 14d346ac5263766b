/** A direction: right, down, towards the camera; of length 1. */
export type Direction = readonly [number, number, number];

/** A round light far off, by how it looks from the subject. */
export interface Lamp {
  /** Where its middle is: right, down, towards the camera; of length 1. */
  readonly direction: Direction;
  /** The angle that its width takes up, rad, above 0 and below π. */
  readonly angularSize: number;
  /** The same of a round hole in it, which does not shine; 0 or left out where it has none. */
  readonly hole?: number;
}
