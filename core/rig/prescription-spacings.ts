import { betweenSettings } from './between-settings.ts';
import type { Prescription } from './prescription.ts';

/** What moves in a lens of known surfaces, and how. */
export interface PrescriptionSpacings {
  /** The surfaces behind which thicknesses change, by their places in the list. */
  readonly moving: readonly number[];
  /** Those thicknesses, mm, at a stated *m₀*; as printed at the settings that are known. */
  readonly at: (focusMagnification: number) => readonly number[];
}

const known = new WeakMap<Prescription, PrescriptionSpacings>();

/**
 * The spacings of a lens that change when it is focused, as its cams lead them.
 *
 * @param prescription the lens; kept in mind by identity, so that it is worked out once
 * @returns which move, and how far apart they stand at every setting; see {@link betweenSettings} for what is taken in between
 */
export function prescriptionSpacings(prescription: Prescription): PrescriptionSpacings {
  const before = known.get(prescription);
  if (before) return before;
  const { surfaces, settings = [] } = prescription;
  const moving = surfaces.flatMap((_, index) => (settings.some(({ thickness }) => index in thickness) ? [index] : []));
  const at = betweenSettings(
    settings.map(({ focusMagnification }) => focusMagnification),
    settings.map(({ thickness }) => moving.map((index) => thickness[index] ?? surfaces[index]?.thickness ?? NaN)),
  );
  const spacings = { moving, at };
  known.set(prescription, spacings);
  return spacings;
}
