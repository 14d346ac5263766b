import { requireCount } from '#core/quantity/count.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { opticalRadius, type InAiryPattern } from './airy-pattern.ts';
import { evenly, type RadialProfile } from './airy-profile.ts';
import { evenRule } from './even-rule.ts';
import { phaseAt, requirePupil, steepestPhase, type Pupil } from './pupil.ts';

/** A place in the image that a pupil makes of a point. */
export type InPointSpread = Pupil & InAiryPattern;

/**
 * The image of a point along a radius: the point spread function of a pupil with defocus and spherical aberration.
 *
 * |2 ∫ exp(2πi W(ρ)) J0(v ρ) ρ dρ|² for ρ from 0 to 1, with v = π r/(λ N_w)
 *
 * @param given.imageRadius how far out, on the sensor, mm; 0 or above, at most about 30000 λ N_w
 * @param given.defocusAberration *W₀₂₀*, wavelengths at the rim of the pupil; at most 200 either way
 * @param given.sphericalAberration *W₀₄₀*, wavelengths at the rim of the pupil; at most 20 either way
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param samples how many, evenly spaced, the middle and the outermost included; a whole number from 2 to 100000
 * @returns intensities relative to the middle of a perfect image, accurate to 1e-7. Linear light.
 * @throws OutOfRange for a quantity outside its range; RangeError for a count that is none
 *
 * Assumes scalar diffraction, one wavelength, a circular pupil evenly lit and a slender cone.
 * Source: Goodman, Introduction to Fourier Optics, ch. 6 (from memory). How it is computed: [README](README.md#psf).
 *
 * @example pointSpreadProfile({ imageRadius: 0.02, defocusAberration: 0.5, sphericalAberration: 0, wavelength: 0.00055,
 *   effectiveFNumber: 16 }, 3).intensities // [0.405285, ...]
 */
export function pointSpreadProfile(given: InPointSpread, samples: number): RadialProfile {
  const pupil = requirePupil(given);
  requireCount('samples', samples, 2, 100000);
  const reach = requireReach(given, 1e5);
  return { radii: evenly(given.imageRadius, samples), intensities: Array.from(intensitiesUpTo(pupil, reach, samples)) };
}

/**
 * How bright the middle of a point's image is beside that of a perfect one: the Strehl ratio, 0 to 1.
 *
 * @throws OutOfRange for an aberration outside the range of {@link Pupil}
 * @example strehlRatio({ defocusAberration: 0.25, sphericalAberration: 0 }) // 0.810569, Rayleigh's quarter wave
 */
export function strehlRatio(given: Pupil): number {
  return Math.min(1, intensitiesUpTo(requirePupil(given), 0, 1)[0] as number);
}

/** v of the given radius. Throws OutOfRange beyond *most*, where the integrals would take too long. */
export function requireReach(given: InAiryPattern, most: number): number {
  const v = opticalRadius(given);
  const accepted = `at most ${Math.floor(most / Math.PI)} times λ N_w`;
  if (v > most) throw new OutOfRange('image-radius', given.imageRadius, accepted);
  return v;
}

/**
 * Relative intensity at *samples* values of v from 0 to *reach*.
 *
 * J0 is an average of cosines, so the Hankel integral is the cosine transform of the pupil's amplitude summed along
 * strips: a Gauss-Chebyshev sum over strips, with one rotation instead of one cosine for each further v.
 */
export function intensitiesUpTo(pupil: Pupil, reach: number, samples: number): Float64Array {
  const steepest = steepestPhase(pupil);
  // Polynomials of degree reach + steepest carry the integrand; a quarter of it suffices for an even one, a fifth is margin.
  const strips = Math.ceil(0.3 * (reach + steepest)) + 8;
  const along = evenRule(0.25 * steepest + 12);
  const real = new Float64Array(samples);
  const imaginary = new Float64Array(samples);

  for (let strip = 1; strip <= strips; strip++) {
    const angle = (strip * Math.PI) / (2 * strips + 1);
    const x = Math.cos(angle);
    const width = Math.sin(angle) ** 2;
    let [re, im] = [0, 0];
    for (let k = 0; k < along.nodes.length; k++) {
      const phase = phaseAt(pupil, x * x + width * (along.nodes[k] as number) ** 2);
      re += (along.weights[k] as number) * Math.cos(phase);
      im += (along.weights[k] as number) * Math.sin(phase);
    }
    const weight = (4 * width) / (2 * strips + 1);
    addWave(real, imaginary, weight * re, weight * im, samples > 1 ? (x * reach) / (samples - 1) : 0);
  }
  return real.map((re, n) => re * re + (imaginary[n] as number) ** 2);
}

/** Adds (re, im) cos(n step) to the n-th sample of each. */
function addWave(real: Float64Array, imaginary: Float64Array, re: number, im: number, step: number): void {
  const [turnCosine, turnSine] = [Math.cos(step), Math.sin(step)];
  let [cosine, sine] = [1, 0];
  for (let n = 0; n < real.length; n++) {
    real[n] = (real[n] as number) + re * cosine;
    imaginary[n] = (imaginary[n] as number) + im * cosine;
    const next = cosine * turnCosine - sine * turnSine;
    sine = sine * turnCosine + cosine * turnSine;
    cosine = next;
  }
}
