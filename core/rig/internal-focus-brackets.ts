import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Lens } from './lens.ts';
import { requireLens } from './require-lens.ts';

/** Between what and what a number lies that is not known. */
export interface Bracket {
  readonly least: number;
  readonly most: number;
}

/** What is known of a lens with internal focusing at one setting, by its closest distance and magnification alone. */
export interface InternalFocusBrackets {
  /** *f*, mm. */
  readonly focalLength: Bracket;
  /** *N_w* at the sensor, for the lens alone. */
  readonly effectiveFNumber: Bracket;
  /** *L*, sensor to subject, mm; known at the closest setting. */
  readonly focusDistance: Bracket;
  /** *w*, from the front rim, mm; may be negative. */
  readonly workingDistance: Bracket;
  /** *1/u*, 1/mm: 0 for a pupil infinitely far away, negative for one behind the subject. */
  readonly inverseEntrancePupilDistance: Bracket;
}

/**
 * Least and most of what two numbers leave open about a lens with internal focusing.
 *
 * H', rim and exit pupil move away from the sensor by 0 to f∞ m₀; N ≤ N_w ≤ N (1 + m₀/P∞)
 *
 * @param lens known by closest distance and magnification. What it `keeps` is an assumption and narrows nothing, but for iris and rear group
 *   still, which is how it is built: the exit pupil and *N_w* are known then.
 * @param focusMagnification *m₀*, above 0 up to the closest
 * @param fNumber *N*, as marked
 * @returns brackets that hold the truth of every lens between two extremes: one in which only glass before the iris moves, and one that moves as a
 *   whole. Extremes of each for itself: not all of them can be true at once.
 * @throws OutOfRange for a lens that is focused in another way, for a setting it does not reach and for what no lens can have, by name
 *
 * Assumes that H lies between where it is at infinity and where it is at the closest setting. Source: derived in
 * [README](README.md#what-two-numbers-leave-open).
 */
export function internalFocusBrackets(lens: Lens, focusMagnification: number, fNumber: number): InternalFocusBrackets {
  requireLens(lens);
  requirePositive('f-number', fNumber);
  const { focusing, focalLength: infinity, pupilMagnification } = lens;
  const most = focusing.by === 'internal' ? focusing.closestMagnification : 0;
  if (focusing.by !== 'internal' || !(focusMagnification > 0 && focusMagnification <= most)) {
    throw new OutOfRange(
      'focus-magnification',
      focusMagnification,
      `above 0, up to ${most}, which internal focusing reaches`,
    );
  }
  const closestDistance = requirePositive('focus-distance', focusing.closestFocusDistance);
  const still = focusing.keeps === 'iris-and-rear-group';
  const moves = infinity * focusMagnification;
  const focalLength = { least: infinity / (1 + focusMagnification), most: infinity };
  const pupil = { least: infinity * pupilMagnification, most: infinity * pupilMagnification + (still ? 0 : moves) };

  // H at the closest setting, L less f (1 + 1/m) for the f that are possible there; at infinity it is known.
  const farH = infinity + lens.principalSeparation;
  const nearH = closestDistance - infinity / most;
  const focusDistance =
    focusMagnification === most
      ? { least: closestDistance, most: closestDistance }
      : {
          least: infinity / focusMagnification + Math.min(farH, nearH - infinity),
          most: infinity * (1 + 1 / focusMagnification) + Math.max(farH, nearH),
        };
  const rim = farH + lens.frontPrincipalDepth;
  return {
    focalLength,
    effectiveFNumber: { least: fNumber, most: fNumber * (still ? 1 : 1 + focusMagnification / pupilMagnification) },
    focusDistance,
    workingDistance: { least: focusDistance.least - rim - moves, most: focusDistance.most - rim },
    // 1/u = m₀ (1/f − m₀/(f (m₀ + P))), f (m₀ + P) being how far the exit pupil stands before the sensor.
    inverseEntrancePupilDistance: {
      least: focusMagnification * (1 / focalLength.most - focusMagnification / pupil.least),
      most: focusMagnification * (1 / focalLength.least - focusMagnification / pupil.most),
    },
  };
}
