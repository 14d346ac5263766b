import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import type { DiscSource } from './flat-source.ts';
import type { Vector } from './vector.ts';

/** How the lights stand: one to the left, a like one to the right as well, or a ring about the camera's axis. */
export type Arrangement = 'one' | 'two' | 'ring';

/** What round lights before a ball are set up with. */
export type LightsGiven = Named<'source-size' | 'flash-distance' | 'ball-radius' | 'luminance' | 'light-angle'>;

/** A ring's hole, as a share of its width outside. */
export const holeOfRing = 0.5;

/**
 * Round lights before a ball about the origin, in one horizontal plane with the camera, which is far off along z.
 *
 * @param given.sourceSize *S_w*, diameter of each, of a ring outside, mm, above 0
 * @param given.flashDistance *d*, from the ball's nearest point to the middle of the light, mm, above 0
 * @param given.ballRadius *r*, mm, above 0
 * @param given.luminance *L_v*, the same all over each, cd/m², above 0
 * @param given.lightAngle *ψ*, from the camera's direction to the middle of the light, rad; a ring stands straight ahead whatever it is
 * @param arrangement see {@link Arrangement}
 * @returns the lights, each facing the ball's centre, the left one first
 * @throws OutOfRange for anything not finite, and for a length or luminance that is not above zero
 */
export function lightsAroundBall(
  { sourceSize, flashDistance, ballRadius, luminance, lightAngle }: LightsGiven,
  arrangement: Arrangement,
): readonly DiscSource[] {
  requirePositive('source-size', sourceSize);
  requirePositive('flash-distance', flashDistance);
  requirePositive('ball-radius', ballRadius);
  requirePositive('luminance', luminance);
  requireFinite('light-angle', lightAngle);
  const at = (angle: number): DiscSource => {
    const outwards: Vector = [Math.sin(angle), 0, Math.cos(angle)];
    const away = flashDistance + ballRadius;
    return {
      shape: 'disc',
      sourceSize,
      luminance,
      centre: [away * outwards[0], 0, away * outwards[2]],
      facing: [-outwards[0], 0, -outwards[2]],
    };
  };
  if (arrangement === 'ring') return [{ ...at(0), hole: holeOfRing * sourceSize }];
  return arrangement === 'one' ? [at(-lightAngle)] : [at(-lightAngle), at(lightAngle)];
}
