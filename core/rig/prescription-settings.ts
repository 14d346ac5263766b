import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription, requirePrescription } from './faulty-prescription.ts';
import { glassPoints } from './paraxial-trace.ts';
import { prescriptionSpacings } from './prescription-spacings.ts';
import type { Prescription, Surface } from './prescription.ts';
import { surfacesAt } from './surfaces-at.ts';

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
  /** *m₀* as traced at any stated one, between the settings too. */
  readonly magnificationAt: (stated: number) => number;
}

/**
 * How far m₀ may lie from what is stated: designs put the sensor where the picture is sharpest at full aperture, not where rays near
 * the axis meet. In published lenses that makes up to 0.016.
 */
const bestFocus = 0.03;

/** A magnification this small is none. */
const rounding = 1e-9;

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
  const traced: number[] = [];
  const magnificationAt = tracing(prescription, shift);
  stated.forEach((at, place) => {
    const magnification = place === 0 ? tracing(prescription, 0)(0) : magnificationAt(at);
    if (!(
      Math.abs(magnification - at) <= bestFocus &&
      (place === 0 || magnification > (traced[place - 1] as number) + rounding)
    )) {
      throw new FaultyPrescription(
        infinity.length - 1,
        `where the setting for ${at} has the sensor the focus magnification is ${magnification}; accepted: within ${bestFocus} of what is stated, and more than in the setting before`,
      );
    }
    // Infinity is where parallel light meets.
    traced.push(place === 0 ? 0 : magnification);
  });
  const settings = { focalLength, shift, stated, traced, magnificationAt };
  known.set(prescription, settings);
  return settings;
}

/**
 * *m₀* by the stated setting: one ray that comes in parallel to the axis at height −1 meets the sensor at that height.
 *
 * m₀ = −(A + C d), d from the last vertex to the sensor. Written out, for a setting is found by trying.
 */
function tracing(prescription: Prescription, shift: number): (stated: number) => number {
  const { surfaces } = prescription;
  const { moving, at } = prescriptionSpacings(prescription);
  const powers = surfaces.map(({ radius, index }, place) => (index - (surfaces[place - 1]?.index ?? 1)) / radius);
  const gaps = surfaces.map(({ thickness, index }) => thickness / index);
  return (stated) => {
    const thickness = moving.length > 0 ? at(stated) : [];
    for (let place = 0; place < moving.length; place++) {
      const index = moving[place] as number;
      gaps[index] = (thickness[place] as number) / (surfaces[index] as Surface).index;
    }
    let height = -1;
    let slope = 0;
    for (let index = 0; index < powers.length; index++) {
      slope -= height * (powers[index] as number);
      height += slope * (gaps[index] as number);
    }
    return height + slope * shift;
  };
}
