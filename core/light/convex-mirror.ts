import { requirePositive } from '#core/quantity/errors.ts';

/** Something before a shiny ball. */
export interface BeforeMirror {
  /** From the ball's nearest point, mm, above 0. */
  readonly subjectDistance: number;
  /** *r*, mm, above 0. */
  readonly ballRadius: number;
}

/** The upright, small, virtual image in a ball. */
export interface MirrorImage {
  /** How deep it lies behind the ball's nearest point, mm: never deeper than half the radius. */
  readonly depth: number;
  /** Image over subject size, 0 to 1. */
  readonly magnification: number;
}

/**
 * Where a shiny ball shows the image of what stands before it, and how large.
 *
 * depth = d r/(2 d + r), m = r/(2 d + r)
 *
 * @param given see {@link BeforeMirror}
 * @returns see {@link MirrorImage}
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes rays close to the axis. Focus for a catchlight lies up to half the radius behind the eye's surface.
 * Source: OpenStax, University Physics Vol. 3, section 2.2. Derived in [README](README.md#convex-mirror).
 */
export function convexMirrorImage({ subjectDistance, ballRadius }: BeforeMirror): MirrorImage {
  requirePositive('subject-distance', subjectDistance);
  requirePositive('ball-radius', ballRadius);
  const magnification = ballRadius / (2 * subjectDistance + ballRadius);
  return { depth: subjectDistance * magnification, magnification };
}
