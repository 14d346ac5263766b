import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { mirrorPoint } from './mirror-point.ts';

/**
 * The width of a light's reflection in a shiny ball. Exact.
 *
 * width = 2 r sin p, with S_w/2 − r sin p = (d + r (1 − cos p)) tan 2p
 *
 * @param given.sourceSize *S_w*, width of the light, mm, above 0
 * @param given.ballRadius *r*, of the ball or eye, mm, above 0
 * @param given.flashDistance *d*, from the ball's nearest point to the light, mm, above 0
 * @returns mm, as the camera sees it on the ball; never more than √2 r, however large the light
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a light centred on the axis and facing the ball, and a camera far away on it, looking past the light or through it.
 * `catchlightOutline` takes a light and a camera anywhere.
 * Source: derived in [README](README.md#reflected-rays).
 *
 * @example catchlightWidth({ sourceSize: 300, ballRadius: 8, flashDistance: 100 }) // 7.437...
 */
export function catchlightWidth({
  sourceSize,
  ballRadius,
  flashDistance,
}: Named<'source-size' | 'ball-radius' | 'flash-distance'>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('ball-radius', ballRadius);
  requirePositive('flash-distance', flashDistance);
  const [aside, ahead] = [sourceSize / 2, flashDistance + ballRadius];
  const { angle } = mirrorPoint({
    ballRadius,
    lightDistance: Math.hypot(aside, ahead),
    cameraDistance: Infinity,
    apart: Math.atan2(aside, ahead),
  });
  return 2 * ballRadius * Math.sin(angle);
}
