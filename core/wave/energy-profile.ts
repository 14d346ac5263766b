import { requireCount } from '#core/quantity/count.ts';
import { evenly } from './airy-profile.ts';
import { besselJ1 } from './bessel.ts';
import { evenRule } from './even-rule.ts';
import { transferAt } from './optical-transfer.ts';
import { requireReach, type InPointSpread } from './point-spread.ts';
import { requirePupil, steepestPhase, type Pupil } from './pupil.ts';

/** One curve, ready to be drawn: the n-th share belongs to the n-th radius. */
export interface EnergyProfile {
  /** Of circles about the middle of the image, on the sensor, mm, evenly spaced from 0. */
  readonly radii: readonly number[];
  /** Of the point's light within each circle, 0 to 1. */
  readonly shares: readonly number[];
}

/**
 * The encircled energy of a pupil with defocus and spherical aberration: the share of a point's light within a radius.
 *
 * 2v ∫ OTF(s) J1(2 v s) ds for s from 0 to 1, with v = π r/(λ N_w)
 *
 * @param given as for `pointSpreadProfile`, but with a radius of at most about 950 λ N_w
 * @param samples how many radii, evenly spaced, 0 and the outermost included; a whole number from 2 to 10000
 * @returns radii and shares, accurate to 1e-6. For a perfect pupil in focus `encircledEnergy` has the closed form.
 * @throws OutOfRange for a quantity outside its range; RangeError for a count that is none
 *
 * Assumes what `pointSpreadProfile` assumes. Derived in [README](README.md#energy).
 *
 * @example energyProfile({ imageRadius: 0.0107331, defocusAberration: 0, sphericalAberration: 0, wavelength: 0.00055,
 *   effectiveFNumber: 16 }, 2).shares // [0, 0.837785]
 */
export function energyProfile(given: InPointSpread, samples: number): EnergyProfile {
  const pupil = requirePupil(given);
  requireCount('samples', samples, 2, 10000);
  const reach = requireReach(given, 3000);
  return { radii: evenly(given.imageRadius, samples), shares: sharesUpTo(pupil, reach, samples) };
}

/** The shares at *samples* values of v from 0 to *reach*. */
export function sharesUpTo(pupil: Pupil, reach: number, samples: number): number[] {
  // The transfer leaves the cutoff as (1 − s)^(3/2): smooth, and with its weight even, in q where s = 1 − q².
  const { nodes, weights } = evenRule(0.3 * (2 * reach + 4 * steepestPhase(pupil)) + 12);
  const places = nodes.map((q) => 1 - q * q);
  const parts = places.map((s, k) => 2 * (nodes[k] as number) * (weights[k] as number) * transferAt(pupil, s));
  return evenly(reach, samples).map((v) => {
    const integral = parts.reduce((sum, part, k) => sum + part * besselJ1(2 * v * (places[k] as number)), 0);
    return Math.min(1, Math.max(0, 2 * v * integral));
  });
}
