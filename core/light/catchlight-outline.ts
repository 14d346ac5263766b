import { requireCount } from '#core/quantity/count.ts';
import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import { cornersOf, isBefore, nearestPart, sourceAxes, type FlatSource } from './flat-source.ts';
import { mirrorPoint } from './mirror-point.ts';
import { across, cross, direction, dot, length, scaled, sum, type Vector } from './vector.ts';

/** Whence a ball about the origin is photographed. */
export interface CameraPlace {
  /** The direction of the camera from the ball's centre, of any length. */
  readonly towards: Vector;
  /** From the centre to the entrance pupil, mm; `Infinity` for a camera far away. */
  readonly distance: number;
  /** What is up in the picture, as far as the view allows; straight up unless said otherwise. */
  readonly up?: Vector;
}

/** A point of a catchlight. */
export interface CatchlightPoint {
  /** In the picture: to the right and up from the ball's centre, mm in the plane through that centre which faces the camera. */
  readonly x: number;
  readonly y: number;
  /** On the ball, mm from its centre. */
  readonly place: Vector;
  /** False where the ball itself hides this part of the light: the outline then follows the ball's rim. */
  readonly seen: boolean;
}

/** From straight ahead and far away, as a long lens sees it. */
export const cameraFarAhead: CameraPlace = { towards: [0, 0, 1], distance: Infinity };

/**
 * The outline of a light's reflection in a shiny ball or eye, as the camera sees it; of a ring its outer rim. Every point is exact.
 *
 * @param source its place counted from the ball's centre; all of it outside the ball
 * @param ballRadius *r*, mm, above 0
 * @param camera see {@link CameraPlace}
 * @param points how many, 3 or more; straight edges come out bent, so each edge of a rectangle has a quarter of them
 * @returns the points in order around the outline; none where no part of the light is mirrored towards the camera
 * @throws OutOfRange for a light or camera within the ball, and for a size or direction that is none; RangeError for fewer than three points
 *
 * Assumes a flat light that shines to one side, and nothing that stands in the way.
 * Source: derived in [README](README.md#reflected-rays).
 */
export function catchlightOutline(
  source: FlatSource,
  ballRadius: number,
  camera: CameraPlace = cameraFarAhead,
  points = 64,
): readonly CatchlightPoint[] {
  requirePositive('ball-radius', ballRadius);
  requireCount('points', points, 3, 100_000);
  const nearest = nearestPart(source);
  if (!(ballRadius < nearest)) {
    throw new OutOfRange('ball-radius', ballRadius, `below ${nearest}, where the nearest part of the light is`);
  }
  const outline = rimOf(source, points).map((light) => catchlightPoint(light, ballRadius, camera));
  return outline.some(({ seen, place }) => seen && isBefore(source, place)) ? outline : [];
}

/** Where the camera sees the reflection of a single point of light. Throws and assumes what {@link catchlightOutline} does. */
export function catchlightPoint(
  light: Vector,
  ballRadius: number,
  camera: CameraPlace = cameraFarAhead,
): CatchlightPoint {
  const ahead = direction(camera.towards);
  const up = across(ahead, direction(camera.up ?? [0, 1, 0]));
  const right = cross(up, ahead);
  const aside = across(ahead, light);
  const { angle, seen } = mirrorPoint({
    ballRadius,
    lightDistance: length(light),
    cameraDistance: camera.distance,
    apart: Math.atan2(Math.abs(dot(light, aside)), dot(light, ahead)),
  });
  const place = scaled(sum(scaled(ahead, Math.cos(angle)), aside, Math.sin(angle)), ballRadius);
  // Nearer to the camera than the centre, and so a little larger in the picture.
  const nearer = camera.distance === Infinity ? 1 : camera.distance / (camera.distance - dot(place, ahead));
  return { x: dot(place, right) * nearer, y: dot(place, up) * nearer, place, seen };
}

function rimOf(source: FlatSource, points: number): readonly Vector[] {
  const steps = Array.from({ length: points }, (_, index) => index / points);
  if (source.shape === 'rectangle') {
    const corners = cornersOf(source);
    return steps.map((step) => {
      const edge = Math.floor(step * 4);
      return between(corners[edge]!, corners[(edge + 1) % 4]!, step * 4 - edge);
    });
  }
  const { first, second } = sourceAxes(source);
  const radius = source.sourceSize / 2;
  return steps.map((step) => {
    const turn = 2 * Math.PI * step;
    return sum(sum(source.centre, first, radius * Math.cos(turn)), second, radius * Math.sin(turn));
  });
}

function between(from: Vector, to: Vector, share: number): Vector {
  return sum(from, sum(to, from, -1), share);
}
