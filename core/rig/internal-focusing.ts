import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { FocusState, InternalFocusing, Lens } from './lens.ts';

/**
 * A lens with internal focusing at one of its settings, from its closest distance and the magnification there and what it is taken to keep.
 *
 * 1/f moves evenly with m₀; where iris and rear group stand still f = f∞/(1 + m₀) and P = P∞ (1 + m₀) − m₀
 *
 * @param lens as it is at infinity
 * @param focusing the two numbers, and what is kept
 * @param focusMagnification *m₀*, from 0 to the closest
 * @returns its state there. The barrel keeps its length: from rim to sensor h + HH' + f (1 + m₀) is what it was.
 * @throws OutOfRange for numbers that no lens can have, by name; with iris and rear group still for *P* not above m₀/(1 + m₀) at infinity
 *
 * Source: derived in [README](README.md#focusing).
 */
export function internalState(lens: Lens, focusing: InternalFocusing, focusMagnification: number): FocusState {
  if (focusing.keeps === 'iris-and-rear-group') return stillState(lens, focusing, focusMagnification);
  const { principalSeparation, pupilMagnification } = lens;
  const { closestMagnification: magnification, closestFocusDistance: focusDistance, keeps } = focusing;
  const close = closeFocusFocalLength({ focusDistance, magnification, principalSeparation });
  const share = focusMagnification / magnification;
  const focalLength = 1 / ((1 - share) / lens.focalLength + share / close);
  return {
    focusMagnification,
    focalLength,
    principalSeparation,
    frontPrincipalDepth: lens.frontPrincipalDepth + lens.focalLength - focalLength * (1 + focusMagnification),
    pupilMagnification,
    fNumberDrift: keeps === 'f-number' ? 1 : focalLength / lens.focalLength,
  };
}

/**
 * Exit pupil f∞ P∞ before the sensor and as wide as ever, H' f∞ before it; h/f runs evenly to where the two numbers have H. Evenly, for that is what
 * 1/f and h/f do where one spacing changes.
 */
function stillState(lens: Lens, focusing: InternalFocusing, focusMagnification: number): FocusState {
  const closest = requirePositive('focus-magnification', focusing.closestMagnification);
  const { focalLength: infinity, principalSeparation, frontPrincipalDepth, pupilMagnification: far } = lens;
  const pupilMagnification = far * (1 + focusMagnification) - focusMagnification;
  if (!(pupilMagnification > 0)) {
    const least = focusMagnification / (1 + focusMagnification);
    throw new OutOfRange('pupil-magnification', far, `above ${least}, or iris and rear group have not stood still`);
  }
  const rim = infinity + principalSeparation + frontPrincipalDepth;
  const workingDistance = requirePositive('focus-distance', focusing.closestFocusDistance) - rim;
  // m w = f (1 + m) − h m, and f (1 + m) is f∞.
  const closestDepth = infinity / closest - workingDistance;
  const share = focusMagnification / closest;
  const depthInInfinities = (1 - share) * frontPrincipalDepth + share * closestDepth * (1 + closest);
  const depth = depthInInfinities / (1 + focusMagnification);
  return {
    focusMagnification,
    focalLength: infinity / (1 + focusMagnification),
    principalSeparation: principalSeparation + frontPrincipalDepth - depth,
    frontPrincipalDepth: depth,
    pupilMagnification,
    fNumberDrift: pupilMagnification / (far * (1 + focusMagnification)),
  };
}
