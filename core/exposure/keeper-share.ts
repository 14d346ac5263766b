import { requirePositive } from '#core/quantity/errors.ts';
import { erf } from './erf.ts';

/** A camera that sways to and fro along its axis, about the place where the subject would be in the sharp plane. */
export interface Swaying {
  /** From the sharp plane towards the lens, mm, above 0 */
  readonly nearLimit: number;
  /** From the sharp plane away from the lens, mm, above 0 and finite */
  readonly farLimit: number;
  /** *σ*, standard deviation, mm, above 0 */
  readonly sway: number;
}

/**
 * The share of frames in which a small part of the subject lies within the depth of field.
 *
 * share = ½ [erf(near/(√2 σ)) + erf(far/(√2 σ))], which is erf(T/(2√2 σ)) where both limits are equal
 *
 * @param camera see {@link Swaying}
 * @returns from 0 to 1. Not the share of good pictures: what else goes wrong is not in it.
 * @throws OutOfRange for anything not finite and above zero. An infinite far limit is refused: there everything is in focus.
 *
 * Assumes a sway that is normally distributed and frames taken without regard to it: who presses at the right moment does better.
 * Source: the normal distribution. Derived in [README](README.md#keepers).
 *
 * @example keeperShare({ nearLimit: 1, farLimit: 1, sway: 1 }) // 0.68268949...
 */
export function keeperShare({ nearLimit, farLimit, sway }: Swaying): number {
  requirePositive('near-limit', nearLimit);
  requirePositive('far-limit', farLimit);
  const spread = Math.SQRT2 * requirePositive('sway', sway);
  return (erf(nearLimit / spread) + erf(farLimit / spread)) / 2;
}
