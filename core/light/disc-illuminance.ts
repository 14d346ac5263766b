import { OutOfRange } from '#core/quantity/errors.ts';
import { sourceAxes, type DiscSource } from './flat-source.ts';
import { edgeTerm, type SurfaceElement } from './polygon-illuminance.ts';
import { across, cross, dot, length, sum, type Vector } from './vector.ts';

/**
 * The illuminance that a flat, evenly bright disc throws on a small piece of surface, for luminance 1. Exact, in closed form.
 *
 * E/L_v = ½ ∮ n · (v × dv)/|v|² around the rim, v from the surface to the rim; where the surface's own horizon cuts the disc,
 * along the rim that is seen and back along the cut
 *
 * @param source its luminance is not used
 * @param element the lit piece; it must lie before the disc's bright side
 * @returns lx for 1 cd/m², 0 to π. Facing a disc on its axis: π a²/(a² + d²), a its radius.
 * @throws OutOfRange for a piece within a millionth of the radius of the rim: on it brightness and darkness meet, and there is no one answer
 *
 * Source: as polygonIlluminance, for a polygon of ever more corners. Derived in [README](README.md#disc).
 */
export function discIlluminance(source: DiscSource, { point, normal }: SurfaceElement): number {
  const radius = source.sourceSize / 2;
  const { back } = sourceAxes(source);
  const centre = sum(source.centre, point, -1);
  const first = across(back, centre);
  const second = cross(back, first);
  const fromRim = Math.hypot(dot(centre, back), Math.abs(dot(centre, first)) - radius);
  if (!(fromRim >= 1e-6 * radius)) {
    throw new OutOfRange('flash-distance', fromRim, `at least ${1e-6 * radius} mm from the rim of the light`);
  }
  const rim = (turn: number): Vector =>
    sum(sum(centre, first, radius * Math.cos(turn)), second, radius * Math.sin(turn));

  const height = dot(centre, normal);
  const swing = radius * Math.hypot(dot(first, normal), dot(second, normal));
  if (height <= -swing) return 0;
  const seen = height >= swing ? Math.PI : Math.acos(-height / swing);
  const middle = Math.atan2(dot(second, normal), dot(first, normal));
  const [begin, end] = seen === Math.PI ? [-Math.PI, Math.PI] : [middle - seen, middle + seen];

  const arc = rimIntegral({ centre, first, second, back, radius, normal }, begin, end);
  const chord = seen === Math.PI ? 0 : edgeTerm(rim(end), rim(begin), normal);
  return Math.max(0, (arc + chord) / 2);
}

interface Rim {
  readonly centre: Vector;
  readonly first: Vector;
  readonly second: Vector;
  readonly back: Vector;
  readonly radius: number;
  readonly normal: Vector;
}

/** ∫ n · (v × dv)/|v|² over part of the rim: (A + B cos t + C sin t)/(D + G cos t), each term in closed form. */
function rimIntegral({ centre, first, second, back, radius, normal }: Rim, begin: number, end: number): number {
  const depth = dot(centre, back);
  const aside = dot(centre, first);
  const steady = radius ** 2 * dot(normal, back);
  const withCosine = radius * (aside * dot(normal, back) - depth * dot(normal, first));
  const withSine = -radius * depth * dot(normal, second);

  const mean = length(centre) ** 2 + radius ** 2;
  const swing = 2 * radius * aside;
  // √(mean² − swing²), without its cancellation where the point lies close to the rim.
  const root = Math.sqrt((depth ** 2 + (aside - radius) ** 2) * (depth ** 2 + (aside + radius) ** 2));
  const ratio = swing / (mean + root);

  // The lag of the true angle behind t, over ratio: sin t in the limit of a point on the disc's axis.
  const lag = (turn: number) => {
    const tangent = Math.sin(turn) / (1 + ratio * Math.cos(turn));
    return ratio > onAxis ? Math.atan(ratio * tangent) / ratio : tangent;
  };
  const lags = lag(end) - lag(begin);
  const plain = (end - begin - 2 * ratio * lags) / root;
  const cosine = (2 * mean * lags) / (root * (mean + root)) - ((end - begin) * swing) / (root * (root + mean));
  const fall = (Math.cos(end) - Math.cos(begin)) / (mean + swing * Math.cos(begin));
  const sine = ratio > onAxis ? -Math.log1p(swing * fall) / swing : -fall;
  return steady * plain + withCosine * cosine + withSine * sine;
}

/** A point aside by so little lies on the disc's axis: the terms that are divided by it are at their limits, to the last digit. */
const onAxis = 1e-17;
