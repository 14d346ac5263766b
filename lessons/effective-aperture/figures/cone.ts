import type { Way } from './ways.ts';

/** What a cone is drawn from; lengths in mm. */
export interface ConeGiven {
  readonly fNumber: number;
  readonly magnification: number;
  readonly pupilMagnification: number;
  readonly focusMagnification: number;
  readonly converterFactor: number;
}

/** A place on the cone's rim: from the sensor, and from the axis, mm. */
export interface RimPoint {
  readonly at: number;
  readonly half: number;
}

export interface Cone {
  /** The opening as the sensor sees it, without a converter. */
  readonly pupil: RimPoint;
  /** Where a converter makes the cone slimmer; absent without one. */
  readonly converter?: RimPoint;
  /** The same opening with its cone as it is far away, at the mark. */
  readonly faraway: RimPoint;
}

/** All cones are drawn for a lens of this focal length, mm: at one mark and size the angles are the same for any. */
export const drawnFocalLength = 50;

/** How far before the image of the lens alone a converter stands here, mm, unless the lens is nearer. */
const usualReach = 40;

/**
 * The cone of light from the opening to the middle of the sensor, for a thin converter and a lens of {@link drawnFocalLength}.
 *
 * Its slope at the sensor is that of the effective f-number: `cone.test.ts` holds it to the core's.
 */
export function coneOf(way: Way, given: ConeGiven): Cone {
  const { fNumber, magnification: m, pupilMagnification: P, focusMagnification, converterFactor: k } = given;
  const f = drawnFocalLength;
  if (way === 'reversed') {
    const half = f / fNumber / 2;
    return { pupil: { at: f * (m + 1 / P), half }, faraway: { at: f, half } };
  }
  const half = (P * f) / fNumber / 2;
  const faraway = { at: f * P, half };
  if (way === 'converter') {
    const alone = f * (P + m / k);
    const reach = reachOf(alone);
    return {
      pupil: { at: k * reach + alone - reach, half },
      converter: { at: k * reach, half: (half * reach) / alone },
      faraway,
    };
  }
  return { pupil: { at: f * (P + (way === 'focusing' ? m : focusMagnification)), half }, faraway };
}

const nearShare = 0.6;
const reachOf = (alone: number) => Math.min(usualReach, nearShare * alone);
