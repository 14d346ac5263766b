import { catchlightPoint } from './catchlight-outline.ts';
import type { DiscSource } from './flat-source.ts';
import { across, direction, sum } from './vector.ts';

/** Where a catchlight ends in the picture, mm to the right of the ball's centre. */
export interface CatchlightSides {
  readonly left: number;
  readonly right: number;
}

/**
 * Where the reflection of a round light in a shiny ball ends to the left and to the right, as a camera far ahead sees it. Exact.
 *
 * @param source a disc or ring whose middle is at the height of the ball's centre and which faces that centre; all of it outside the ball
 * @param ballRadius *r*, mm, above 0
 * @returns see {@link CatchlightSides}; where the ball hides the end of the light, the ball's own rim
 * @throws OutOfRange for a light within the ball, and for a size or direction that is none
 *
 * By the mirror law at the two ends of the light's level diameter; no other point of its rim is mirrored farther to a side.
 * Source: derived in [README](README.md#reflected-rays).
 */
export function catchlightSides(source: DiscSource, ballRadius: number): CatchlightSides {
  const aside = across(direction(source.facing), [1, 0, 0]);
  const ends = [-1, 1].map(
    (side) => catchlightPoint(sum(source.centre, aside, (side * source.sourceSize) / 2), ballRadius).x,
  );
  return { left: Math.min(...ends), right: Math.max(...ends) };
}
