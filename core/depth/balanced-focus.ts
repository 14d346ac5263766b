import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/** Where the sharp plane stands in a deep subject whose two ends are blurred alike. */
export interface BalancedFocus {
  /** From the sharp plane to the nearest and to the farthest part, mm; together the depth. */
  readonly toNearest: number;
  readonly toFarthest: number;
  /** How far off the plane a telecentric chain of the same *m* and *N_w* would blur a point as much, mm: b = m² × this/N_w. */
  readonly evenDepth: number;
}

/**
 * Where to focus so that the nearest and the farthest part of a deep subject are blurred by the same.
 *
 * even depth = Z/(1 + √(1 + (Z/u)²)), 1/nearest = 1/even + 1/u, 1/farthest = 1/even − 1/u
 *
 * @param given.subjectDepth *Z*, mm, above 0
 * @param given.inverseEntrancePupilDistance *1/u*, 1/mm, of either sign; that of the chain focused on the plane
 * @returns see {@link BalancedFocus}: half of the depth each way through a telecentric chain, nearer the pupil's side through any other
 * @throws OutOfRange for a depth that is not above zero, or anything not finite
 *
 * Source: the two limits with the blur for c, added up to Z. Derived in [README](README.md#balance).
 *
 * @example balancedFocus({ subjectDepth: 75, inverseEntrancePupilDistance: 0.01 }).toNearest // 25
 */
export function balancedFocus(
  given: Readonly<Named<'subject-depth' | 'inverse-entrance-pupil-distance'>>,
): BalancedFocus {
  const depth = requirePositive('subject-depth', given.subjectDepth);
  const inverse = requireFinite('inverse-entrance-pupil-distance', given.inverseEntrancePupilDistance);
  const evenDepth = evenDepthOf(depth, inverse);
  // The end on the pupil's side, the shorter way; the other takes what is left, for its own denominator would cancel.
  const shorter = evenDepth / (1 + Math.abs(inverse) * evenDepth);
  const longer = depth - shorter;
  return inverse > 0
    ? { toNearest: shorter, toFarthest: longer, evenDepth }
    : { toNearest: longer, toFarthest: shorter, evenDepth };
}

/** The even depth alone, unchecked: for a search through many chains. A depth of 0 is even as it is. */
export function evenDepthOf(subjectDepth: number, inverseEntrancePupilDistance: number): number {
  return subjectDepth / (1 + Math.hypot(1, subjectDepth * inverseEntrancePupilDistance));
}
