import { requirePositive } from '#core/quantity/errors.ts';
import { betweenSettings } from './between-settings.ts';
import type { FocusState } from './lens.ts';

const known = new WeakMap<readonly FocusState[], (focusMagnification: number) => readonly number[]>();

/**
 * A lens between settings at which it is known.
 *
 * H' stands f (1 + m₀) before the sensor, the exit pupil f (m₀ + P), P f/drift wide at marked f/1; these, H and the rim run from setting to setting,
 * and f, HH', h, P and the drift follow from them
 *
 * @param states the first at infinity, *m₀* growing; kept in mind by identity, so they must not be changed in place
 * @param focusMagnification *m₀*, from 0 to that of the last
 * @returns the state there; a known one as it is
 * @throws OutOfRange where no lens lies between: for a focal length or a pupil magnification not above 0
 *
 * Assumes nothing else than that those five run smoothly, see {@link betweenSettings}: what stands still stays still, and what moves with the
 * lens as a whole does so. Source: derived in [README](README.md#between-settings).
 */
export function stateBetween(states: readonly FocusState[], focusMagnification: number): FocusState {
  const same = states.find((state) => state.focusMagnification === focusMagnification);
  if (same) return same;
  let places = known.get(states);
  if (!places) {
    places = betweenSettings(
      states.map((state) => state.focusMagnification),
      states.map(placesOf),
    );
    known.set(states, places);
  }
  return stateOf(focusMagnification, places(focusMagnification));
}

/** From the sensor: H', H, front rim, exit pupil, mm; last the width of that pupil at marked f/1. */
function placesOf(state: FocusState): readonly number[] {
  const { focusMagnification, focalLength, pupilMagnification } = state;
  const rear = focalLength * (1 + focusMagnification);
  const front = rear + state.principalSeparation;
  const pupil = focalLength * (focusMagnification + pupilMagnification);
  return [
    rear,
    front,
    front + state.frontPrincipalDepth,
    pupil,
    (pupilMagnification * focalLength) / state.fNumberDrift,
  ];
}

/** The lens whose points stand there. */
function stateOf(focusMagnification: number, places: readonly number[]): FocusState {
  const [rear, front, rim, pupil, width] = places as [number, number, number, number, number];
  const focalLength = requirePositive('focal-length', rear / (1 + focusMagnification));
  const pupilMagnification = requirePositive('pupil-magnification', pupil / focalLength - focusMagnification);
  return {
    focusMagnification,
    focalLength,
    principalSeparation: front - rear,
    frontPrincipalDepth: rim - front,
    pupilMagnification,
    fNumberDrift: requirePositive('f-number', (pupilMagnification * focalLength) / width),
  };
}
