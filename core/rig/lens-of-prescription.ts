import type { Lens } from './lens.ts';
import { closestOfPrescription, prescriptionInUse } from './prescription-in-use.ts';
import type { Prescription } from './prescription.ts';

/**
 * A lens for a chain, from its prescription, which it carries: at each of its settings it is traced.
 *
 * f, HH', h and P by paraxial trace; m₀ = s'/f − 1 with s' from H' to where the prescription has its sensor
 *
 * @param prescription in air; its first vertex counts as the front rim. Without settings the lens is focused as a whole.
 * @param mount.registerDistance *R*, of the mount it is put into, mm: its flange stands that far before the sensor
 * @param mount.apertureControl where its iris is opened and closed
 * @param mount.closestMagnification of a lens without settings; 0 where left out
 * @returns the lens as a kit holds it. Its iris keeps its diameter while focusing; what that does to f/D is in the settings.
 * @throws FaultyPrescription for what no lens can have, and for a setting whose spacings give another m₀ than is stated; OutOfRange for a lens that forms no picture or is telecentric, by name
 *
 * Source: derived in [README](README.md#surface-by-surface).
 */
export function lensOfPrescription(
  prescription: Prescription,
  mount: Pick<Lens, 'registerDistance' | 'apertureControl'> & { readonly closestMagnification?: number },
): Lens {
  const { registerDistance, apertureControl, closestMagnification = 0 } = mount;
  const { points, pupils } = prescriptionInUse(prescription, 0);
  const traced = (prescription.settings?.length ?? 0) > 1;
  if (traced) prescriptionInUse(prescription, closestOfPrescription(prescription));
  return {
    focalLength: points.focalLength,
    principalSeparation: points.principalSeparation,
    frontPrincipalDepth: points.frontPrincipal,
    pupilMagnification: pupils.pupilMagnification,
    registerDistance,
    focusing: traced ? { by: 'prescription' } : { by: 'unit', closestMagnification },
    apertureControl,
    rearProtrusion: Math.max(0, registerDistance - points.backFocus),
    prescription,
  };
}
