import { OutOfRange } from '#core/quantity/errors.ts';
import { prescriptionSpacings } from './prescription-spacings.ts';

/**
 * A real lens, surface by surface, as patents and design programs list it; light runs from the first surface to the last.
 *
 * Lengths in mm, indices at one wavelength.
 */
export interface Prescription {
  readonly surfaces: readonly Surface[];
  /** The surface in whose vertex plane the stop stands, just before its glass, counted from 0. Often a flat one in air. */
  readonly stop: number;
  /** Settings of a lens that focuses: the first at infinity, each nearer than the one before. */
  readonly settings?: readonly FocusSetting[];
}

export interface Surface {
  /** *r*, positive where the centre lies towards the sensor, Infinity for a flat surface. */
  readonly radius: number;
  /** To the next vertex; of the last surface: to the sensor. */
  readonly thickness: number;
  /** Refractive index behind the surface; 1 in air. */
  readonly index: number;
  /** Free diameter; where left out the glass is taken to be wide enough. */
  readonly clearAperture?: number;
}

/** What changes when such a lens is focused. */
export interface FocusSetting {
  /** *m₀*, 0 at infinity. */
  readonly focusMagnification: number;
  /** Thickness behind each surface that moves, by its place in the list. */
  readonly thickness: Readonly<Record<number, number>>;
}

/** How far a surface bulges from its vertex plane at the height *y*, towards its centre; NaN beyond its radius. */
export function sag(radius: number, y: number): number {
  return radius === Infinity ? 0 : y ** 2 / (radius * (1 + Math.sqrt(1 - (y / radius) ** 2)));
}

/**
 * The surfaces of a lens as listed for one of its settings, or between them.
 *
 * Between known settings the moving thicknesses run smoothly and without overshooting, as {@link prescriptionSpacings} has them.
 *
 * @param prescription the lens
 * @param focusMagnification *m₀* as stated, from 0 to the nearest setting. What it truly is there, to the last digit, says `prescriptionInUse`.
 * @returns its surfaces with the thicknesses of that setting; as listed where it has no settings
 * @throws OutOfRange for a setting beyond the last one, below 0 or no number
 *
 * Source: derived in [README](README.md#between-settings).
 */
export function surfacesAt(prescription: Prescription, focusMagnification: number): readonly Surface[] {
  const { surfaces, settings = [] } = prescription;
  const most = settings.at(-1)?.focusMagnification ?? Infinity;
  if (!(focusMagnification >= 0 && focusMagnification <= most && focusMagnification < Infinity)) {
    throw new OutOfRange('focus-magnification', focusMagnification, `from 0 to ${most}, the nearest known setting`);
  }
  const { moving, at } = prescriptionSpacings(prescription);
  if (moving.length === 0) return surfaces;
  const thickness = at(focusMagnification);
  const placed = [...surfaces];
  moving.forEach((index, place) => {
    placed[index] = { ...(surfaces[index] as Surface), thickness: thickness[place] as number };
  });
  return placed;
}
