import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import { requirePlace } from './require.ts';
import { across, cross, direction, dot, scaled, sum, type Vector } from './vector.ts';

interface Placed {
  /** The middle of the lit surface, mm. */
  readonly centre: Vector;
  /** Whither it shines: a direction of any length. The back is dark. */
  readonly facing: Vector;
  /** *L_v*, the same all over it and in all directions: a diffuser's; cd/m², 0 or above. */
  readonly luminance: number;
}

/** A round light: a bowl, a lamp's diffuser. */
export interface DiscSource extends Placed {
  readonly shape: 'disc';
  /** *S_w*, its diameter, mm, above 0. */
  readonly sourceSize: number;
  /** Diameter of a round hole in its middle that does not shine, mm, below *S_w*: a ring is a disc with a hole. None unless said. */
  readonly hole?: number;
}

/** A rectangular light: a soft box, a window, a card. */
export interface RectangleSource extends Placed {
  readonly shape: 'rectangle';
  /** *S_w*, mm, above 0. */
  readonly sourceSize: number;
  /** Its other side, mm, above 0. */
  readonly height: number;
  /** Along which its height runs, as far as the facing allows: a direction of any length. Straight up unless said otherwise. */
  readonly up?: Vector;
}

/** A flat, evenly lit, diffusing surface that shines to one side. */
export type FlatSource = DiscSource | RectangleSource;

/** Two directions in the lit surface, square to each other; *first* × *second* points out of its dark back. */
export interface SourceAxes {
  readonly first: Vector;
  readonly second: Vector;
  readonly back: Vector;
}

/** The axes of a source: across and up of a rectangle, any two of a disc. Throws OutOfRange for a source that is none. */
export function sourceAxes(source: FlatSource): SourceAxes {
  requirePlace(source.centre);
  requirePositive('source-size', source.sourceSize);
  requireNotNegative('luminance', source.luminance);
  if (source.shape === 'rectangle') requirePositive('source-size', source.height);
  else if (!((source.hole ?? 0) >= 0 && (source.hole ?? 0) < source.sourceSize))
    throw new OutOfRange('source-size', source.hole!, 'a hole smaller than the light, or none');
  const facing = direction(source.facing);
  const up = (source.shape === 'rectangle' && source.up) || ([0, 1, 0] as const);
  const second = across(facing, direction(up));
  return { first: cross(facing, second), second, back: scaled(facing, -1) };
}

/** The four corners of a rectangle, in the turn that its axes give. */
export function cornersOf(source: RectangleSource): readonly Vector[] {
  const { first, second } = sourceAxes(source);
  const corner = (across: number, along: number) =>
    sum(sum(source.centre, first, (across * source.sourceSize) / 2), second, (along * source.height) / 2);
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** How far the nearest part of a source is from the origin, mm; a hole counts as part of it. */
export function nearestPart(source: FlatSource): number {
  const { first, second, back } = sourceAxes(source);
  const away = dot(source.centre, back);
  // Where the origin stands square over the plane of the source, counted from its middle.
  const [aside, along] = [-dot(source.centre, first), -dot(source.centre, second)];
  if (source.shape === 'disc') return Math.hypot(away, Math.max(0, Math.hypot(aside, along) - source.sourceSize / 2));
  const beyond = (place: number, size: number) => Math.max(0, Math.abs(place) - size / 2);
  return Math.hypot(away, beyond(aside, source.sourceSize), beyond(along, source.height));
}

/** True where a point lies before the lit side of a source. */
export function isBefore(source: FlatSource, point: Vector): boolean {
  return dot(sum(point, source.centre, -1), source.facing) > 0;
}
