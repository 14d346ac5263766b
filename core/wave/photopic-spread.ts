import { requireCount } from '#core/quantity/count.ts';
import type { Named } from '#core/quantity/formula.ts';
import { evenly, type RadialProfile } from './airy-profile.ts';
import { sharesUpTo, type EnergyProfile } from './energy-profile.ts';
import { inLight, photopicLight } from './photopic-light.ts';
import { intensitiesUpTo, requireReach } from './point-spread.ts';
import { requirePupil, type Pupil } from './pupil.ts';

type InWhiteLight = Pupil & Named<'image-radius' | 'effective-f-number'>;

/**
 * The image of a point in white light along a radius: `pointSpreadProfile` averaged over the visible by V(λ).
 *
 * @param given.imageRadius how far out, on the sensor, mm; 0 or above
 * @param given others as for `photopicTransfer`
 * @param samples how many, evenly spaced, the middle and the outermost included; a whole number from 2 to 100000
 * @returns luminances relative to the middle of a perfect image in the same light, within 1e-4. Linear light.
 * @throws OutOfRange for a quantity outside its range; RangeError for a count that is none
 *
 * @example photopicProfile({ imageRadius: 0.01, effectiveFNumber: 16, defocusAberration: 0, sphericalAberration: 0 }, 2).intensities[0] // 1
 */
export function photopicProfile(given: InWhiteLight, samples: number): RadialProfile {
  const pupil = requirePupil(given);
  requireCount('samples', samples, 2, 100000);
  const sums = new Float64Array(samples);
  let perfect = 0;
  for (const { wavelength, share } of photopicLight) {
    // The same light in a smaller disc is brighter: as one over the square of the wavelength.
    const weight = share / wavelength ** 2;
    const curve = intensitiesUpTo(inLight(pupil, wavelength), requireReach({ ...given, wavelength }, 1e5), samples);
    curve.forEach((intensity, n) => (sums[n] = (sums[n] as number) + weight * intensity));
    perfect += weight;
  }
  return { radii: evenly(given.imageRadius, samples), intensities: Array.from(sums, (sum) => sum / perfect) };
}

/**
 * The encircled energy in white light: `energyProfile` averaged over the visible by V(λ).
 *
 * @param given as for {@link photopicProfile}, but with a radius of at most about 0.4 N_w mm
 * @param samples how many radii, evenly spaced, 0 and the outermost included; a whole number from 2 to 10000
 * @returns radii and shares of the light as the eye weighs it, within 0.001
 * @throws OutOfRange for a quantity outside its range; RangeError for a count that is none
 *
 * @example photopicEnergyProfile({ imageRadius: 0.0107, effectiveFNumber: 16, defocusAberration: 0, sphericalAberration: 0 }, 2).shares[1]
 */
export function photopicEnergyProfile(given: InWhiteLight, samples: number): EnergyProfile {
  const pupil = requirePupil(given);
  requireCount('samples', samples, 2, 10000);
  const shares = new Float64Array(samples);
  for (const { wavelength, share } of photopicLight) {
    const curve = sharesUpTo(inLight(pupil, wavelength), requireReach({ ...given, wavelength }, 3000), samples);
    curve.forEach((within, n) => (shares[n] = (shares[n] as number) + share * within));
  }
  return { radii: evenly(given.imageRadius, samples), shares: Array.from(shares) };
}
