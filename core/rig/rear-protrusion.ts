import type { Named } from '#core/quantity/formula.ts';
import type { Lens } from './lens.ts';
import { tracing } from './traced-focusing.ts';

/**
 * What stands out behind the flange of a lens at one of its settings: foremost, when the lens is turned round.
 *
 * unit focusing: rear protrusion − f m₀, but never less than what is fixed to the flange
 *
 * @param lens as a kit holds it, whose numbers are in range
 * @param focusMagnification *m₀*, a setting that it reaches
 * @param focalLength *f* at that setting, mm
 * @returns mm, 0 or above
 *
 * Assumes that glass goes with what moves: all of it in a lens focused as a whole, as traced where its surfaces are known. Of a lens that focuses inside,
 * and whose groups are not known, the last is taken to stand still. Source: derived in [README](README.md#a-lens-turned-round).
 */
export function rearProtrusionAt(lens: Lens, focusMagnification: number, focalLength: number): number {
  const { focusing, rearProtrusion = 0, fixedProtrusion = 0, prescription, registerDistance } = lens;
  const fixed = Math.min(rearProtrusion, fixedProtrusion);
  if (focusing.by === 'unit') {
    return remainingRearProtrusion({ rearProtrusion, fixed, focusTravel: focalLength * focusMagnification });
  }
  if (focusing.by !== 'prescription' || !prescription) return rearProtrusion;
  const glassAt = (setting: number, f: number) => registerDistance - tracing().backFocus(lens, setting) - f * setting;
  // What reaches farther back than the glass at infinity is no glass, and stays.
  const isGlass = rearProtrusion <= Math.max(fixed, glassAt(0, lens.focalLength)) + rounded;
  return Math.max(isGlass ? fixed : rearProtrusion, glassAt(focusMagnification, focalLength));
}

/** To how much a protrusion is given, mm. */
const rounded = 0.1;

/**
 * What is left standing out behind the flange of a lens that has been racked out as a whole.
 *
 * @param given.rearProtrusion what stands out at infinity, mm
 * @param given.fixed of it, what is fixed to the flange, mm
 * @param given.focusTravel *q*, how far the lens stands out from its infinity setting, mm
 * @returns mm, 0 or above
 */
export function remainingRearProtrusion({
  rearProtrusion,
  fixed,
  focusTravel,
}: Named<'rear-protrusion' | 'focus-travel'> & { readonly fixed: number }): number {
  return Math.max(Math.min(fixed, rearProtrusion), rearProtrusion - focusTravel);
}
