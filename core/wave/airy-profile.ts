import { requireCount } from '#core/quantity/count.ts';
import { requireNotNegative } from '#core/quantity/errors.ts';
import { airyIntensity, type InAiryPattern } from './airy-pattern.ts';

/** One curve, ready to be drawn: the n-th intensity belongs to the n-th radius. */
export interface RadialProfile {
  /** On the sensor from the middle of the image, mm, evenly spaced from 0. */
  readonly radii: readonly number[];
  /** Relative to the middle of a perfect image, linear light. */
  readonly intensities: readonly number[];
}

/**
 * The Airy pattern along a radius, sampled for a figure.
 *
 * @param given.imageRadius how far out, on the sensor, mm; 0 or above
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param samples how many, the middle and the outermost included; a whole number, 2 or above. Eight for every λ N_w of
 *   radius keep straight lines between them within 1 % of the middle's brightness.
 * @throws OutOfRange as {@link airyIntensity}; RangeError for a count below 2
 *
 * @example airyProfile({ imageRadius: 0.02, wavelength: 0.00055, effectiveFNumber: 16 }, 3).intensities // [1, 0.00366273, 0.00010691]
 */
export function airyProfile(given: InAiryPattern, samples: number): RadialProfile {
  requireCount('samples', samples, 2, 100000);
  const radii = evenly(requireNotNegative('image-radius', given.imageRadius), samples);
  return { radii, intensities: radii.map((imageRadius) => airyIntensity({ ...given, imageRadius })) };
}

/** *samples* numbers from 0 to *last*, evenly spaced, both included. */
export function evenly(last: number, samples: number): number[] {
  return Array.from({ length: samples }, (_, n) => (last * n) / (samples - 1));
}
