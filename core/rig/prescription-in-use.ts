import { OutOfRange } from '#core/quantity/errors.ts';
import { FaultyPrescription } from './faulty-prescription.ts';
import type { Lens, FocusState } from './lens.ts';
import { glassPoints, glassPupils, type GlassPoints, type GlassPupils } from './paraxial-trace.ts';
import { prescriptionSettings } from './prescription-settings.ts';
import type { Prescription, Surface } from './prescription.ts';
import { surfacesAt } from './surfaces-at.ts';
import { bringTracing } from './traced-focusing.ts';

/** A lens of known surfaces at one of its focus settings, traced. */
export interface PrescriptionInUse {
  /** Each where it stands; the last thickness leads to the sensor, on which the image lies. */
  readonly surfaces: readonly Surface[];
  readonly points: GlassPoints;
  readonly pupils: GlassPupils;
  /** What a chain needs of it; the iris keeps its diameter from infinity on. */
  readonly state: FocusState;
}

/** Settings kept in mind for each lens: a hand that drags to and fro meets them again. */
const most = 256;
const known = new WeakMap<Prescription, Map<number, PrescriptionInUse>>();

/** The largest *m₀* that the settings of a prescription reach, as traced; 0 where it lists none. Throws as {@link prescriptionInUse} does. */
export function closestOfPrescription(prescription: Prescription): number {
  return prescriptionSettings(prescription).traced.at(-1) as number;
}

/**
 * A lens of known surfaces at one of its focus settings: where each surface stands, and cardinal points and pupils there.
 *
 * By paraxial trace, with those spacings between settings at which the image of a subject at *m₀* lies on the sensor: −(A + C d) = m₀
 *
 * @param prescription the lens. What was answered for its last 256 settings is kept, so it must not be changed in place.
 * @param focusMagnification *m₀*, from 0 to the nearest setting as traced; any from 0 up for a lens without settings, which is focused as a whole
 * @returns surfaces, points, pupils and state of that setting; *m₀* to 1e-13
 * @throws OutOfRange for a setting it does not reach, for a lens that forms no picture or is telecentric, by name; FaultyPrescription for what no lens can have
 *
 * Assumes that the sensor stays where parallel light meets at infinity, and that between known settings the spacings run as
 * `prescriptionSpacings` has them. Source: derived in [README](README.md#between-settings).
 */
export function prescriptionInUse(prescription: Prescription, focusMagnification: number): PrescriptionInUse {
  let kept = known.get(prescription);
  const before = kept?.get(focusMagnification);
  if (before) return before;
  const answer = tracedAt(prescription, focusMagnification);
  if (!kept) known.set(prescription, (kept = new Map<number, PrescriptionInUse>()));
  const [oldest] = kept.keys();
  if (oldest !== undefined && kept.size >= most) kept.delete(oldest);
  kept.set(focusMagnification, answer);
  return answer;
}

function tracedAt(prescription: Prescription, focusMagnification: number): PrescriptionInUse {
  const surfaces = focusedSurfaces(prescription, focusMagnification);
  const points = glassPoints(surfaces);
  const pupils = glassPupils(surfaces, prescription.stop);
  const { focalLength, principalSeparation, frontPrincipal: frontPrincipalDepth } = points;
  const { pupilMagnification, entranceOverStop } = pupils;
  const far = focusMagnification === 0 ? null : prescriptionInUse(prescription, 0);
  const fOverStop = far ? far.points.focalLength / far.pupils.entranceOverStop : focalLength / entranceOverStop;
  return {
    surfaces,
    points,
    pupils,
    state: {
      focusMagnification,
      focalLength,
      principalSeparation,
      frontPrincipalDepth,
      pupilMagnification,
      fNumberDrift: focalLength / entranceOverStop / fOverStop,
    },
  };
}

function focusedSurfaces(prescription: Prescription, focusMagnification: number): readonly Surface[] {
  const { traced, shift, focalLength } = prescriptionSettings(prescription);
  const asAWhole = traced.length === 1;
  const closest = asAWhole ? Infinity : (traced.at(-1) as number);
  if (!(focusMagnification >= 0 && focusMagnification <= closest && focusMagnification < Infinity)) {
    throw new OutOfRange('focus-magnification', focusMagnification, `from 0 to ${closest}, the nearest known setting`);
  }
  const surfaces = surfacesAt(prescription, asAWhole ? 0 : statedSetting(prescription, focusMagnification));
  const last = surfaces.at(-1) as Surface;
  const thickness = last.thickness + shift + (asAWhole ? focalLength * focusMagnification : 0);
  return [...surfaces.slice(0, -1), { ...last, thickness }];
}

/**
 * The stated setting at which the trace says *m₀*, between the two that enclose it. Regula falsi, the end that stays twice trusted half as
 * much. Source: Dowell and Jarratt, A modified regula falsi method, BIT 11 (1971) (from memory).
 */
function statedSetting(prescription: Prescription, focusMagnification: number): number {
  const { traced, stated, magnificationAt } = prescriptionSettings(prescription);
  const place = traced.findIndex((here) => focusMagnification <= here);
  let high = stated[place] as number;
  let missHigh = (traced[place] as number) - focusMagnification;
  if (missHigh === 0) return high;
  let low = stated[place - 1] as number;
  let missLow = (traced[place - 1] as number) - focusMagnification;
  let stayed = 0;
  for (;;) {
    const at = high - (missHigh * (high - low)) / (missHigh - missLow);
    // As close as numbers lie.
    if (!(at > low)) return low;
    if (!(at < high)) return high;
    const miss = magnificationAt(at) - focusMagnification;
    if (Math.abs(miss) <= 1e-13) return at;
    if (miss > 0) {
      [high, missHigh] = [at, miss];
      if (stayed === -1) missLow /= 2;
      stayed = -1;
    } else {
      [low, missLow] = [at, miss];
      if (stayed === 1) missHigh /= 2;
      stayed = 1;
    }
  }
}

/** A lens of surfaces at one of its settings. */
function traced({ prescription }: Lens, focusMagnification: number) {
  if (!prescription) throw new FaultyPrescription(null, 'a lens that is focused by its prescription needs to have it');
  return prescriptionInUse(prescription, focusMagnification);
}

bringTracing({
  closest: ({ prescription }) => (prescription ? closestOfPrescription(prescription) : 0),
  stateAt: (lens, focusMagnification) => traced(lens, focusMagnification).state,
  backFocus: (lens, focusMagnification) => traced(lens, focusMagnification).points.backFocus,
});
