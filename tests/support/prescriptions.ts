import type { Prescription, Surface } from '#core/rig/prescription.ts';
import listed from '#tests/reference/lens-prescriptions/prescriptions.json' with { type: 'json' };

/** Published prescriptions by name; where they come from stands in `tests/reference/lens-prescriptions`. */
export type PrescriptionName = keyof typeof listed;

/** JSON has no infinity: a flat surface is written in words. */
interface Listed extends Omit<Prescription, 'surfaces'> {
  readonly surfaces: readonly (Omit<Surface, 'radius'> & { readonly radius: number | string })[];
}

export const prescriptionNames = Object.keys(listed) as readonly PrescriptionName[];

const inNumbers = ({ surfaces, ...rest }: Listed): Prescription => ({
  ...rest,
  surfaces: surfaces.map((surface) => ({ ...surface, radius: Number(surface.radius) })),
});

export const prescriptions = Object.fromEntries(
  (Object.entries(listed) as [PrescriptionName, Listed][]).map(([name, lens]) => [name, inNumbers(lens)]),
) as Record<PrescriptionName, Prescription>;

/** Those that are listed with focus settings, from infinity to their nearest. */
export const focusedPrescriptions = prescriptionNames.filter((name) => prescriptions[name].settings !== undefined);
