import { sag, type Prescription, type Surface } from './prescription.ts';
import { surfacesAt } from './surfaces-at.ts';

/** A prescription that no lens can have. Says in which surface the fault lies and what it is. */
export class FaultyPrescription extends Error {
  override readonly name = 'FaultyPrescription';
  /** Its place in the list, from 0; null where the fault is the whole list's. */
  readonly surface: number | null;
  readonly reason: string;

  constructor(surface: number | null, reason: string) {
    super(surface === null ? `prescription: ${reason}` : `surface ${surface}: ${reason}`);
    this.surface = surface;
    this.reason = reason;
  }
}

/** Less than air has no glass; nothing transparent has more than diamond’s 2.4 by much. */
const mostIndex = 4;

/**
 * Throws {@link FaultyPrescription} for what is missing, contradictory or unphysical in a prescription. Returns it, for use inline.
 */
export function requirePrescription(prescription: Prescription): Prescription {
  const { surfaces, stop, settings = [] } = prescription;
  if (surfaces.length === 0) throw new FaultyPrescription(null, 'there is no surface');
  if (!surfaces[stop]) throw new FaultyPrescription(null, `the stop is at surface ${stop}, of ${surfaces.length}`);
  const last = surfaces.at(-1) as Surface;
  if (last.index !== 1) {
    throw new FaultyPrescription(
      surfaces.length - 1,
      `the index behind the last surface is ${last.index}; accepted: 1, for air`,
    );
  }
  requireSettings(prescription);
  for (const { focusMagnification } of settings.length > 0 ? settings : [{ focusMagnification: 0 }]) {
    surfacesAt(prescription, focusMagnification).forEach(requireSurface);
  }
  return prescription;
}

function requireSettings({ surfaces, settings = [] }: Prescription): void {
  settings.forEach(({ focusMagnification, thickness }, place) => {
    const before = settings[place - 1]?.focusMagnification ?? -1;
    if (place === 0 ? focusMagnification !== 0 : !(focusMagnification > before && focusMagnification < Infinity)) {
      throw new FaultyPrescription(
        null,
        `setting ${place} has the focus magnification ${focusMagnification}; accepted: 0 in the first, more in each that follows`,
      );
    }
    const stray = Object.keys(thickness).find((index) => !surfaces[Number(index)]);
    if (stray !== undefined) {
      throw new FaultyPrescription(null, `setting ${place} moves surface ${stray}, of ${surfaces.length}`);
    }
  });
}

function requireSurface(surface: Surface, index: number, surfaces: readonly Surface[]): void {
  const { radius, thickness, index: refractive, clearAperture } = surface;
  const fault = (reason: string) => new FaultyPrescription(index, reason);
  if (!(Math.abs(radius) > 0)) throw fault(`the radius is ${radius}; accepted: any but 0, Infinity for a flat surface`);
  if (!(refractive >= 1 && refractive <= mostIndex)) {
    throw fault(`the index is ${refractive}; accepted: from 1 to ${mostIndex}`);
  }
  if (!Number.isFinite(thickness)) throw fault(`the thickness is ${thickness}; accepted: a finite number`);
  if (clearAperture !== undefined && !(clearAperture > 0 && clearAperture <= 2 * Math.abs(radius))) {
    throw fault(
      `the clear aperture is ${clearAperture}; accepted: above 0, up to twice the radius, ${2 * Math.abs(radius)}`,
    );
  }
  const next = surfaces[index + 1];
  // The last thickness leads to the sensor, and may be negative: turned round, or behind a ring, a lens with its focus inside is of use.
  if (!next) return;
  if (thickness < 0)
    throw fault(`the thickness is ${thickness}; accepted: 0 or above, or the next surface stands before it`);
  const rim = Math.min(clearAperture ?? 0, next.clearAperture ?? 0) / 2;
  const edge = thickness + sag(next.radius, rim) - sag(radius, rim);
  if (edge < 0) throw fault(`it meets the next surface within the clear aperture: the edge is ${edge} mm thick`);
}
