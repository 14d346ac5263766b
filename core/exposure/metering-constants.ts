import { requirePositive } from '#core/quantity/errors.ts';

/** The values that a standard leaves open to makers of exposure meters, and one that is common among them. */
export interface MeteringConstant {
  readonly least: number;
  readonly most: number;
  readonly common: number;
}

/**
 * *K* of meters pointed at the subject, cd s/m² at ISO 1. Makers' values of 14 lie outside the range.
 *
 * Source: ISO 2720:1974, as a library's documentation quotes it; see the outside check on metering constants. See [README](README.md#metering).
 */
export const reflectedLightConstants: MeteringConstant = { least: 10.6, most: 13.4, common: 12.5 };

/** *C* of meters with a flat receptor held at the subject, lx s at ISO 1: they measure illuminance. Source as above. */
export const flatReceptorConstants: MeteringConstant = { least: 240, most: 400, common: 250 };

/** *C* of meters under a white dome, lx s at ISO 1: the dome takes light from all sides as a round subject would. Source as above. */
export const domeReceptorConstants: MeteringConstant = { least: 320, most: 540, common: 330 };

/** The reflectance of a surface at which two meters agree, one pointed at it and one held at it: π K/C. 0.157 for 12.5 and 250. Throws OutOfRange for a constant not finite and above zero. */
export function agreedReflectance(reflected: number, incident: number): number {
  return (
    (Math.PI * requirePositive('reflected-light-constant', reflected)) /
    requirePositive('incident-light-constant', incident)
  );
}
