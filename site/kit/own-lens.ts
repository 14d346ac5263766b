import { magnificationAtFocusDistance } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import type { Lens } from '#core/rig/lens.ts';
import { parts } from '#site/state/crate-parts.ts';
import { numberIn, type KitPart } from './part.ts';

/** How a lens stands that is chosen in a lesson. */
export type Setting =
  /** at its closest focus */
  | 'closest'
  | 'infinity'
  /** at the setting that gives the magnification that is set, or at its closest */
  | 'held'
  /** at the focus distance that is set */
  | 'distance';

/** What may be set beside a lens, and what it is filled in by. */
export type Given = Readonly<Partial<Record<QuantityName, number>>>;

/**
 * What a lens of the kit brings to the input *name* of a lesson; undefined where the kit does not say.
 *
 * A name with a part before it, `turned-lens.focal-length`, asks the same of a lens set to infinity.
 */
export function broughtBy(
  part: KitPart,
  lens: Lens,
  name: QuantityName,
  setting: Setting,
  given: Given,
): number | undefined {
  const closest = closestMagnification(lens);
  const key = name.slice(name.lastIndexOf('.') + 1);
  if (name.startsWith('closest.')) return ofMarks(part, lens, key);
  const isFar = setting === 'infinity' || key !== name;
  const state = stateAt(lens, isFar ? 0 : setting === 'held' ? Math.min(given.magnification!, closest) : closest);
  const values: Readonly<Record<string, number | undefined>> = {
    'focal-length': state.focalLength,
    'focus-magnification': isFar ? 0 : closest,
    'pupil-magnification': state.pupilMagnification,
    'front-principal-depth': state.frontPrincipalDepth,
    'principal-separation': state.principalSeparation,
    'close-up-gap': state.frontPrincipalDepth + parts['close-up-seat'].extension,
    'register-distance': lens.registerDistance,
    'rear-protrusion': lens.rearProtrusion,
    'barrel-length': barrelAt(lens, given['focus-distance']),
  };
  const value = key in values ? values[key] : numberIn(part, key);
  return value === undefined ? undefined : Number(value.toPrecision(6));
}

/** The pair of marks that tell of a lens that focuses inside. */
function ofMarks(part: KitPart, lens: Lens, key: string): number | undefined {
  if (key === 'magnification') return closestMagnification(lens);
  return key === 'principal-separation' ? Number(lens.principalSeparation.toPrecision(6)) : numberIn(part, key);
}

/** Flange to rim of a lens that moves as a whole, with its ring at a distance; no farther out than at life size. */
function barrelAt(lens: Lens, focusDistance: number | undefined): number | undefined {
  if (focusDistance === undefined) return undefined;
  const { focalLength, principalSeparation, frontPrincipalDepth, registerDistance } = lens;
  const far = focalLength + principalSeparation + frontPrincipalDepth - registerDistance;
  const isSharp = focusDistance > 4 * focalLength + principalSeparation;
  return (
    far +
    focalLength * (isSharp ? magnificationAtFocusDistance({ focalLength, focusDistance, principalSeparation }) : 1)
  );
}
