import { requirePrescription } from './faulty-prescription.ts';
import type { Prescription, Surface } from './prescription.ts';

/**
 * The lens turned round: its surfaces in the other order, bulging the other way.
 *
 * The stop keeps its place. Where it stands at the vertex of a piece of glass it gets a plane of its own, for it stood before that
 * surface and stands behind it now.
 *
 * @param prescription the lens, at one setting
 * @returns the reversed lens, sensor at its back focus left to be found: its last thickness is 0
 * @throws FaultyPrescription for what no lens can have
 *
 * Source: light does not mind which way it goes. See [README](README.md#surface-by-surface).
 */
export function reversedPrescription(prescription: Prescription): Prescription {
  const { surfaces, stop } = requirePrescription(prescription);
  const indexBefore = surfaces[stop - 1]?.index ?? 1;
  const plane: Surface = { radius: Infinity, thickness: 0, index: indexBefore };
  const withPlane = [...surfaces.slice(0, stop), plane, ...surfaces.slice(stop)];
  const reversed = withPlane.map((_, place): Surface => {
    const index = withPlane.length - 1 - place;
    const { radius, clearAperture } = withPlane[index] as Surface;
    const before = withPlane[index - 1];
    return {
      radius: radius === Infinity ? Infinity : -radius,
      thickness: before?.thickness ?? 0,
      index: before?.index ?? 1,
      ...(clearAperture === undefined ? {} : { clearAperture }),
    };
  });
  return { surfaces: reversed, stop: withPlane.length - 1 - stop };
}
