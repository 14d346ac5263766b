import { requirePositive } from '#core/quantity/errors.ts';
import type { FlatSource } from './flat-source.ts';
import { illuminanceFrom } from './illuminance-from.ts';
import { direction, scaled, type Vector } from './vector.ts';

/** A ball about the origin. */
export interface Ball {
  /** *r*, mm, above 0. */
  readonly ballRadius: number;
}

/**
 * The illuminance at one point of a ball's surface, from any set of flat lights: how the ball is shaded.
 *
 * @param sources as for `illuminanceFrom`, their places counted from the ball's centre
 * @param ball its radius
 * @param towards the point's direction from the centre, of any length
 * @returns lx. A matt ball that sends back the share ρ of light shines with ρ E/π cd/m² there, in all directions.
 * @throws OutOfRange for a radius, size, luminance or direction that is none
 *
 * Assumes what `illuminanceFrom` assumes. A ball's own shadow is exact: its surface hides from a point just what is below the
 * point's horizon.
 * Source: derived in [README](README.md#shading-of-a-ball).
 *
 * @example ballIlluminance([{ shape: 'disc', sourceSize: 200, luminance: 1000, centre: [0, 0, 110], facing: [0, 0, -1] }], { ballRadius: 10 }, [0, 0, 1]) // 1570.796...
 */
export function ballIlluminance(sources: readonly FlatSource[], { ballRadius }: Ball, towards: Vector): number {
  requirePositive('ball-radius', ballRadius);
  const normal = direction(towards);
  return illuminanceFrom(sources, { point: scaled(normal, ballRadius), normal });
}
