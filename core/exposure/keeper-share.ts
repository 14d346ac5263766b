import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import { erf } from './erf.ts';

/** A camera that sways to and fro along its axis, about a place where the subject is in the sharp plane or not far from it. */
export interface Swaying {
  /** From the sharp plane towards the lens, mm, above 0 */
  readonly nearLimit: number;
  /** From the sharp plane away from the lens, mm, above 0 and finite */
  readonly farLimit: number;
  /** *σ*, standard deviation, mm, above 0 */
  readonly sway: number;
  /** How far beyond the sharp plane the subject is on average, mm; below 0 nearer to the lens, 0 unless said otherwise */
  readonly offset?: number;
}

/**
 * The share of frames in which a small part of the subject lies within the depth of field.
 *
 * share = ½ [erf((near + offset)/(√2 σ)) + erf((far − offset)/(√2 σ))], which is erf(T/(2√2 σ)) with equal limits and no offset
 *
 * @param camera see {@link Swaying}
 * @returns from 0 to 1. Not the share of good pictures: what else goes wrong is not in it.
 * @throws OutOfRange for anything not finite, and all but the offset not above zero. An infinite far limit is refused: there everything is in focus.
 *
 * Assumes a sway that is normally distributed and frames taken without regard to it: who presses at the right moment does better.
 * Source: the normal distribution. Derived in [README](README.md#keepers).
 *
 * @example keeperShare({ nearLimit: 1, farLimit: 1, sway: 1 }) // 0.68268949...
 */
export function keeperShare({ nearLimit, farLimit, sway, offset = 0 }: Swaying): number {
  requirePositive('near-limit', nearLimit);
  requirePositive('far-limit', farLimit);
  const spread = Math.SQRT2 * requirePositive('sway', sway);
  requireFinite('background-distance', offset);
  // Far off, rounding alone decides the sign of what is left.
  return Math.max(0, erf((nearLimit + offset) / spread) + erf((farLimit - offset) / spread)) / 2;
}
