import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { closestMagnification, stateAt } from '../lens-in-use.ts';
import type { Lens } from '../lens.ts';
import { rearProtrusionAt } from '../rear-protrusion.ts';

/**
 * A lens at a setting that can be changed without making a new object: the search moves through hundreds of thousands.
 *
 * Holds what `lensInUse` would answer; a test holds one to the other.
 */
export interface Setting {
  readonly lens: Lens;
  /** The largest *m₀*. */
  readonly closest: number;
  /** f at the closest setting where 1/f moves evenly; f at infinity for all others. */
  readonly closeFocalLength: number;
  focalLength: number;
  frontPrincipalDepth: number;
  principalSeparation: number;
  pupilMagnification: number;
  flangeDepth: number;
  rearProtrusion: number;
  fNumberDrift: number;
}

/** A lens set to infinity, with room for any other setting. */
export function settingOf(lens: Lens): Setting {
  const { focusing, principalSeparation } = lens;
  const setting: Setting = {
    ...stateAt(lens, 0),
    lens,
    closest: closestMagnification(lens),
    flangeDepth: 0,
    rearProtrusion: 0,
    closeFocalLength:
      focusing.by === 'internal' && focusing.keeps !== 'iris-and-rear-group'
        ? closeFocusFocalLength({
            focusDistance: focusing.closestFocusDistance,
            magnification: focusing.closestMagnification,
            principalSeparation,
          })
        : lens.focalLength,
  };
  focusTo(setting, 0);
  return setting;
}

/** Changes *setting* to another *m₀*, from 0 to its closest. */
export function focusTo(setting: Setting, focusMagnification: number): void {
  const { lens } = setting;
  if (lens.focusing.by === 'internal' && lens.focusing.keeps !== 'iris-and-rear-group') {
    const share = focusMagnification / setting.closest;
    const f = 1 / ((1 - share) / lens.focalLength + share / setting.closeFocalLength);
    setting.focalLength = f;
    setting.frontPrincipalDepth = lens.frontPrincipalDepth + lens.focalLength - f * (1 + focusMagnification);
    setting.fNumberDrift = lens.focusing.keeps === 'f-number' ? 1 : f / lens.focalLength;
  } else if (lens.focusing.by !== 'unit') {
    const state = stateAt(lens, focusMagnification);
    setting.focalLength = state.focalLength;
    setting.frontPrincipalDepth = state.frontPrincipalDepth;
    setting.principalSeparation = state.principalSeparation;
    setting.pupilMagnification = state.pupilMagnification;
    setting.fNumberDrift = state.fNumberDrift;
  }
  setting.flangeDepth = setting.focalLength * (1 + focusMagnification) - lens.registerDistance;
  setting.rearProtrusion = rearProtrusionAt(lens, focusMagnification, setting.focalLength);
}
