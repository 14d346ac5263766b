import { requirePositive } from '#core/quantity/errors.ts';
import { betweenSettings } from './between-settings.ts';
import type { FocusState } from './lens.ts';

const known = new WeakMap<readonly FocusState[], (focusMagnification: number) => readonly number[]>();

/**
 * A lens between settings at which it is known.
 *
 * From setting to setting run 1/f, h/f, N_w/N = drift (1 + m₀/P), the inverse width drift/(P f) of the exit pupil at marked f/1, and where the front
 * rim stands, f (1 + m₀) + HH' + h before the sensor; f, HH', h, P and the drift follow from them
 *
 * @param states the first at infinity, *m₀* growing; kept in mind by identity, so they must not be changed in place
 * @param focusMagnification *m₀*, from 0 to that of the last
 * @returns the state there; a known one as it is
 * @throws OutOfRange where no lens lies between: for a pupil magnification not above 0
 *
 * Assumes that those five, which are elements of ray-transfer matrices and grow evenly with every spacing, run smoothly with *m₀*; see
 * {@link betweenSettings}. Exact for a lens that is focused as a whole, for one in which a single spacing changes, and for what stands still.
 * Source: derived in [README](README.md#between-settings).
 */
export function stateBetween(states: readonly FocusState[], focusMagnification: number): FocusState {
  const same = states.find((state) => state.focusMagnification === focusMagnification);
  if (same) return same;
  let elements = known.get(states);
  if (!elements) {
    elements = betweenSettings(
      states.map((state) => state.focusMagnification),
      states.map(elementsOf),
    );
    known.set(states, elements);
  }
  return stateOf(focusMagnification, elements(focusMagnification) as Elements);
}

/** 1/f, h/f, N_w/N, 1/(width of the exit pupil at marked f/1), rim before the sensor. */
type Elements = readonly [power: number, depth: number, slenderness: number, perWidth: number, rim: number];

function elementsOf(state: FocusState): Elements {
  const { focusMagnification, focalLength, principalSeparation, frontPrincipalDepth, pupilMagnification } = state;
  return [
    1 / focalLength,
    frontPrincipalDepth / focalLength,
    state.fNumberDrift * (1 + focusMagnification / pupilMagnification),
    state.fNumberDrift / (pupilMagnification * focalLength),
    focalLength * (1 + focusMagnification) + principalSeparation + frontPrincipalDepth,
  ];
}

function stateOf(focusMagnification: number, elements: Elements): FocusState {
  const [power, depth, slenderness, perWidth, rim] = elements;
  const focalLength = 1 / power;
  const frontPrincipalDepth = depth * focalLength;
  // The exit pupil stands f (m₀ + P) before the sensor, its width times N_w.
  const pupilMagnification = requirePositive(
    'pupil-magnification',
    slenderness / (perWidth * focalLength) - focusMagnification,
  );
  return {
    focusMagnification,
    focalLength,
    principalSeparation: rim - frontPrincipalDepth - focalLength * (1 + focusMagnification),
    frontPrincipalDepth,
    pupilMagnification,
    fNumberDrift: pupilMagnification * focalLength * perWidth,
  };
}
