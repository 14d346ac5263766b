import { OutOfRange } from '#core/quantity/errors.ts';
import type { Prescription, Surface } from './prescription.ts';
import { prescriptionSpacings } from './prescription-spacings.ts';

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
