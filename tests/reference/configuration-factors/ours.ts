import { illuminanceFrom } from '#core/light/illuminance-from.ts';
import type { FlatSource } from '#core/light/flat-source.ts';
import type { Vector } from '#core/light/vector.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Facing {
  across: number;
  along: number;
  distance: number;
}

const factorOf = (source: FlatSource, point: Vector, normal: Vector) =>
  illuminanceFrom([source], { point, normal }) / (Math.PI * source.luminance);

/** A rectangle above the plane z = 0 that faces it, one corner above the origin. */
const above = ({ across, along, distance }: Facing): FlatSource => ({
  shape: 'rectangle',
  sourceSize: across,
  height: along,
  luminance: 1,
  centre: [across / 2, along / 2, distance],
  facing: [0, 0, -1],
});

const middles = (count: number) => Array.from({ length: count }, (_, index) => (index + 0.5) / count);
const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

const fromCorner = (given: Facing) => ({ factor: factorOf(above(given), [0, 0, 0], [0, 0, 1]) });
const betweenParallel = (given: Facing) => ({
  factor: mean(
    middles(60).flatMap((x) =>
      middles(60).map((y) => factorOf(above(given), [x * given.across, y * given.along, 0], [0, 0, 1])),
    ),
  ),
});

export const ours = oursById({
  'howell-b3': fromCorner,
  // The same square set upright: its foot on the element's own plane.
  'howell-b4': (given: Facing) => ({ factor: factorOf(above(given), [0, 0, 0], [1, 0, 0]) }),
  'drysdale-corner': ({ alpha, aspect }: { alpha: number; aspect: number }) =>
    fromCorner({ across: Math.sqrt(alpha * aspect), along: Math.sqrt(alpha / aspect), distance: 1 }),
  'ees-f3d-1': betweenParallel,
  'ees-f3d-14': betweenParallel,
  'machball-perpendicular': ({ side }: { side: number }) => {
    const wall: FlatSource = {
      shape: 'rectangle',
      sourceSize: side,
      height: side,
      luminance: 1,
      centre: [0, side / 2, side / 2],
      facing: [1, 0, 0],
      up: [0, 0, 1],
    };
    const places = middles(200).flatMap((x) => middles(60).map((y): Vector => [x * side, y * side, 0]));
    return { factor: mean(places.map((place) => factorOf(wall, place, [0, 0, 1]))) };
  },
  'coaxial-discs': ({ radius, distance }: { radius: number; distance: number }) => {
    const disc: FlatSource = {
      shape: 'disc',
      sourceSize: 2 * radius,
      luminance: 1,
      centre: [0, 0, distance],
      facing: [0, 0, -1],
    };
    return { factor: mean(middles(400).map((share) => factorOf(disc, [radius * Math.sqrt(share), 0, 0], [0, 0, 1]))) };
  },
  'disc-tilted': ({ radius, distance, tilt }: { radius: number; distance: number; tilt: number }) => ({
    factor: factorOf(
      { shape: 'disc', sourceSize: 2 * radius, luminance: 1, centre: [0, 0, distance], facing: [0, 0, -1] },
      [0, 0, 0],
      [Math.sin(tilt), 0, Math.cos(tilt)],
    ),
  }),
});
