import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription, requirePrescription } from './faulty-prescription.ts';
import type { Focusing, FocusState, Lens } from './lens.ts';
import { glassPoints, glassPupils } from './paraxial-trace.ts';
import { surfacesAt, type Prescription, type Surface } from './prescription.ts';

/**
 * A lens for a chain, from its prescription: cardinal points and pupils at each of its settings.
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
  requirePrescription(prescription);
  const { registerDistance, apertureControl, closestMagnification = 0 } = mount;
  const settings = prescription.settings ?? [{ focusMagnification: 0, thickness: {} }];
  const states = settings.map((setting) => stateOf(prescription, setting.focusMagnification));
  const [infinity] = states as [FocusState];
  const inUse = states.map((state) => ({ ...state, fNumberDrift: state.fNumberDrift / infinity.fNumberDrift }));
  const focusing: Focusing = inUse.length > 1 ? { by: 'states', states: inUse } : { by: 'unit', closestMagnification };
  return {
    focalLength: infinity.focalLength,
    principalSeparation: infinity.principalSeparation,
    frontPrincipalDepth: infinity.frontPrincipalDepth,
    pupilMagnification: infinity.pupilMagnification,
    registerDistance,
    focusing,
    apertureControl,
    rearProtrusion: Math.max(0, registerDistance - glassPoints(surfacesAt(prescription, 0)).backFocus),
  };
}

/**
 * How far m₀ may lie from what is stated: designs put the sensor where the picture is sharpest at full aperture, not where rays near
 * the axis meet. In published lenses that makes up to 0.016.
 */
const bestFocus = 0.03;

/** One setting; `fNumberDrift` still is f over the entrance pupil for a stop of diameter 1. */
function stateOf(prescription: Prescription, setting: number): FocusState {
  const surfaces = surfacesAt(prescription, setting);
  const points = glassPoints(surfaces);
  const pupils = glassPupils(surfaces, prescription.stop);
  if (!(points.focalLength > 0))
    throw new OutOfRange('focal-length', points.focalLength, 'above 0, or it forms no picture');
  const imageDistance = (surfaces.at(-1) as Surface).thickness - points.rearPrincipal;
  const focusMagnification = imageDistance / points.focalLength - 1;
  if (!(Math.abs(focusMagnification - setting) <= bestFocus)) {
    throw new FaultyPrescription(
      surfaces.length - 1,
      `where the setting for ${setting} has the sensor the focus magnification is ${focusMagnification}; accepted: within ${bestFocus} of what is stated`,
    );
  }
  return {
    // Infinity is where parallel light meets.
    focusMagnification: setting === 0 ? 0 : focusMagnification,
    focalLength: points.focalLength,
    principalSeparation: points.principalSeparation,
    frontPrincipalDepth: points.frontPrincipal,
    pupilMagnification: pupils.pupilMagnification,
    fNumberDrift: points.focalLength / pupils.entranceOverStop,
  };
}
