import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import { internalState } from './internal-focusing.ts';
import type { FocusState, Lens, LensInUse } from './lens.ts';
import { rearProtrusionAt } from './rear-protrusion.ts';
import { requireLens } from './require-lens.ts';
import { stateBetween } from './states-between.ts';
import { tracing } from './traced-focusing.ts';

/** The largest *m₀* that a lens reaches by its own focusing. */
export function closestMagnification(lens: Lens): number {
  const { focusing } = lens;
  if (focusing.by === 'states') return focusing.states.at(-1)?.focusMagnification ?? 0;
  if (focusing.by === 'prescription') return tracing().closest(lens);
  return focusing.closestMagnification;
}

/**
 * A lens at one of its settings: cardinal points, pupil and flange.
 *
 * unit focusing: f stays, H' stands f (1 + m₀) − R in front of the flange; a lens with a prescription is traced
 *
 * @param lens as a kit holds it
 * @param focusMagnification *m₀*, the magnification it is set to by itself; 0 is infinity
 * @param fNumber *N*, as marked
 * @returns *f*, *HH'*, *h*, *P*, *D* at that setting, how far H' stands before the flange and what stands out behind that. *f/D* need not be *N* any more.
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
    rearProtrusion: rearProtrusionAt(lens, focusMagnification, state.focalLength),
  };
}

/**
 * The lens at the setting *m₀*: its data at infinity for unit focusing, traced where its surfaces are known, else worked out from what is known.
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
  if (focusing.by === 'states') return stateBetween(focusing.states, focusMagnification);
  if (focusing.by === 'prescription') return tracing().stateAt(lens, focusMagnification);
  return {
    focusMagnification,
    focalLength: lens.focalLength,
    principalSeparation: lens.principalSeparation,
    frontPrincipalDepth: lens.frontPrincipalDepth,
    pupilMagnification: lens.pupilMagnification,
    fNumberDrift: 1,
  };
}
