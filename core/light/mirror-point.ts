import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';

/** A point of light, a ball and a camera, in the plane that holds all three. */
export interface MirrorRay {
  /** *r*, of the ball, mm, above 0. */
  readonly ballRadius: number;
  /** From the ball's centre to the point of light, mm, more than *r*. */
  readonly lightDistance: number;
  /** From the ball's centre to the camera's entrance pupil, mm, more than *r*; `Infinity` for a camera far away. */
  readonly cameraDistance: number;
  /** Between the two directions from the centre, rad, 0 to π. */
  readonly apart: number;
}

/** Where on a ball a point of light is mirrored. */
export interface MirrorPoint {
  /** From the direction of the camera to that of the mirroring point, seen from the centre, rad. */
  readonly angle: number;
  /** False where the ball hides the light: the angle is then that of the rim that the camera sees. */
  readonly seen: boolean;
}

/**
 * The point of a shiny ball at which the camera sees a point of light. Exact.
 *
 * The surface there meets both rays at the same angle: p + β(p, camera) = (γ − p) + β(γ − p, light), with
 * β(x, q) = arctan(r sin x/(q − r cos x)), p the point's angle from the camera and γ the angle of the light.
 *
 * @param ray see {@link MirrorRay}
 * @returns see {@link MirrorPoint}; to rounding
 * @throws OutOfRange for a light or camera within the ball and anything else outside its range
 *
 * Source: Alhazen's problem. Derived in [README](README.md#reflected-rays).
 */
export function mirrorPoint({ ballRadius, lightDistance, cameraDistance, apart }: MirrorRay): MirrorPoint {
  requirePositive('ball-radius', ballRadius);
  requireOutside(lightDistance, ballRadius);
  if (lightDistance === Infinity) throw new OutOfRange('flash-distance', lightDistance, 'a finite distance');
  requireOutside(cameraDistance, ballRadius);
  requireNotNegative('incidence-angle', apart);

  const rim = Math.acos(ballRadius / cameraDistance);
  const terminator = Math.acos(ballRadius / lightDistance);
  if (apart > rim + terminator) return { angle: rim, seen: false };

  const lead = (angle: number) =>
    2 * angle -
    apart +
    parallax(ballRadius, cameraDistance, angle) -
    parallax(ballRadius, lightDistance, apart - angle);
  let [low, high] = [Math.max(0, apart - terminator), Math.min(apart, rim)];
  // The lead grows with the angle all the way: halving finds the one zero to the last digit.
  for (let middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2) {
    if (lead(middle) < 0) low = middle;
    else high = middle;
  }
  return { angle: high, seen: true };
}

/** How far the direction to something at *distance* turns when one goes from the centre to the surface, *angle* from it. */
function parallax(radius: number, distance: number, angle: number): number {
  return distance === Infinity ? 0 : Math.atan2(radius * Math.sin(angle), distance - radius * Math.cos(angle));
}

function requireOutside(distance: number, ballRadius: number): void {
  if (!(distance > ballRadius))
    throw new OutOfRange('flash-distance', distance, 'outside the ball, counted from its centre');
}
