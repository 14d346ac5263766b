import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { FocusingByStates, FocusState, InternalFocusing, Lens, LensInUse } from './lens.ts';
import { requireLens } from './require-lens.ts';

/** The largest *m₀* that a lens reaches by its own focusing. */
export function closestMagnification({ focusing }: Lens): number {
  return focusing.by === 'states' ? (focusing.states.at(-1)?.focusMagnification ?? 0) : focusing.closestMagnification;
}

/**
 * A lens at one of its settings: cardinal points, pupil and flange.
 *
 * unit focusing: f stays, H' stands f (1 + m₀) − R in front of the flange; internal focusing: 1/f moves evenly with m₀
 *
 * @param lens as a kit holds it
 * @param focusMagnification *m₀*, the magnification it is set to by itself; 0 is infinity
 * @param fNumber *N*, as marked
 * @returns *f*, *HH'*, *h*, *P*, *D* at that setting and how far H' stands before the flange. *f/D* need not be *N* any more.
 * @throws OutOfRange for a setting the lens does not reach, and for what is out of range in its data, by name: a rim behind its
 *   own flange is contradictory as well
 *
 * Source: derived in [README](README.md#focusing).
 */
export function lensInUse(lens: Lens, focusMagnification: number, fNumber: number): LensInUse {
  requirePositive('f-number', fNumber);
  const state = stateAt(lens, focusMagnification);
  return {
    focalLength: state.focalLength,
    principalSeparation: state.principalSeparation,
    frontPrincipalDepth: state.frontPrincipalDepth,
    pupilMagnification: state.pupilMagnification,
    fNumber,
    entrancePupil: state.focalLength / (fNumber * state.fNumberDrift),
    flangeDepth: state.focalLength * (1 + focusMagnification) - lens.registerDistance,
  };
}

/**
 * The lens at the setting *m₀*: its data at infinity for unit focusing, worked out from what is known for internal focusing.
 *
 * @throws OutOfRange as {@link lensInUse} does
 */
export function stateAt(lens: Lens, focusMagnification: number): FocusState {
  requireLens(lens);
  const { focusing } = lens;
  const most = closestMagnification(lens);
  if (!(focusMagnification >= 0 && focusMagnification <= most)) {
    throw new OutOfRange(
      'focus-magnification',
      focusMagnification,
      `from 0 to ${most}, which the lens reaches by itself`,
    );
  }
  if (focusing.by === 'internal') return internalState(lens, focusing, focusMagnification);
  if (focusing.by === 'states') return stateBetween(focusing, focusMagnification);
  return {
    focusMagnification,
    focalLength: lens.focalLength,
    principalSeparation: lens.principalSeparation,
    frontPrincipalDepth: lens.frontPrincipalDepth,
    pupilMagnification: lens.pupilMagnification,
    fNumberDrift: 1,
  };
}

/** The barrel keeps its length, from rim to sensor h + HH' + f at infinity: what f (1 + m₀) takes of it is missing in h. */
function internalState(lens: Lens, focusing: InternalFocusing, focusMagnification: number): FocusState {
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

/** Between known states, the one polynomial in *m₀* through all of them: power for *f*, everything else as it is. */
function stateBetween({ states }: FocusingByStates, focusMagnification: number): FocusState {
  const weights = states.map(({ focusMagnification: here }) =>
    states.reduce(
      (weight, { focusMagnification: there }) =>
        there === here ? weight : (weight * (focusMagnification - there)) / (here - there),
      1,
    ),
  );
  const at = (valueOf: (state: FocusState) => number) =>
    states.reduce((sum, state, index) => sum + valueOf(state) * (weights[index] as number), 0);
  return {
    focusMagnification,
    focalLength: 1 / at((state) => 1 / state.focalLength),
    principalSeparation: at((state) => state.principalSeparation),
    frontPrincipalDepth: at((state) => state.frontPrincipalDepth),
    pupilMagnification: at((state) => state.pupilMagnification),
    fNumberDrift: at((state) => state.fNumberDrift),
  };
}
