import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription, requirePrescription } from './faulty-prescription.ts';
import { glassMatrix } from './glass-matrix.ts';
import { glassPoints } from './paraxial-trace.ts';
import { surfacesAt, type Prescription, type Surface } from './prescription.ts';

/** The known settings of a lens of known surfaces, traced. */
export interface PrescriptionSettings {
  /** *f* at infinity, mm. */
  readonly focalLength: number;
  /** From the sensor as listed to where parallel light meets at infinity, mm: all settings have their sensor there. */
  readonly shift: number;
  /** *m₀* as stated, setting by setting. */
  readonly stated: readonly number[];
  /** *m₀* as traced, setting by setting; 0 in the first. */
  readonly traced: readonly number[];
}

/**
 * How far m₀ may lie from what is stated: designs put the sensor where the picture is sharpest at full aperture, not where rays near
 * the axis meet. In published lenses that makes up to 0.016.
 */
const bestFocus = 0.03;

const known = new WeakMap<Prescription, PrescriptionSettings>();

/**
 * What the settings of a prescription are, traced: the magnifications that its spacings give on a sensor that stays where it is.
 *
 * @param prescription the lens; kept in mind by identity, so that it is checked and traced once and must not be changed in place
 * @returns its settings; the one at infinity alone where it lists none
 * @throws FaultyPrescription for what no lens can have, and for a setting whose spacings give another m₀ than is stated, or none that grows; OutOfRange for a lens that forms no picture
 *
 * Source: derived in [README](README.md#between-settings).
 */
export function prescriptionSettings(prescription: Prescription): PrescriptionSettings {
  const before = known.get(prescription);
  if (before) return before;
  requirePrescription(prescription);
  const stated = prescription.settings?.map(({ focusMagnification }) => focusMagnification) ?? [];
  if (stated.length === 0) stated.push(0);
  const listed = stated.map((at) => surfacesAt(prescription, at));
  for (const surfaces of listed) {
    const { focalLength } = glassPoints(surfaces);
    if (!(focalLength > 0)) throw new OutOfRange('focal-length', focalLength, 'above 0, or it forms no picture');
  }
  const infinity = listed[0] as readonly Surface[];
  const { focalLength, backFocus } = glassPoints(infinity);
  const shift = backFocus - (infinity.at(-1) as Surface).thickness;
  const last = infinity.length - 1;
  const traced: number[] = [];
  listed.forEach((surfaces, place) => {
    const at = stated[place] as number;
    const magnification = magnificationOnSensor(surfaces, place === 0 ? 0 : shift);
    if (!(
      Math.abs(magnification - at) <= bestFocus &&
      (place === 0 || magnification > (traced[place - 1] as number))
    )) {
      throw new FaultyPrescription(
        last,
        `where the setting for ${at} has the sensor the focus magnification is ${magnification}; accepted: within ${bestFocus} of what is stated, and more than in the setting before`,
      );
    }
    // Infinity is where parallel light meets.
    traced.push(place === 0 ? 0 : magnification);
  });
  const settings = { focalLength, shift, stated, traced };
  known.set(prescription, settings);
  return settings;
}

/**
 * *m₀* of a lens whose sensor stands *shift* behind where its last thickness leads.
 *
 * m₀ = −(A + C d), d from the last vertex to the sensor: the height at which a ray meets it that came in parallel to the axis at height −1
 */
export function magnificationOnSensor(surfaces: readonly Surface[], shift: number): number {
  const { A, C } = glassMatrix(surfaces, 0, surfaces.length, 1);
  return -(A + C * ((surfaces.at(-1) as Surface).thickness + shift));
}
