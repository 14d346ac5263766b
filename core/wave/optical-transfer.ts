import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { evenRule } from './even-rule.ts';
import { requirePupil, type Pupil } from './pupil.ts';

/**
 * What a pupil with defocus and spherical aberration makes of a fine pattern: its optical transfer function.
 *
 * (1/π) ∬ exp(2πi [W(r + s) − W(r − s)]) over where two pupils, shifted by ±s = ±ν/ν_c, overlap
 *
 * @param given.spatialFrequency *ν*, line pairs per millimetre on the sensor; 0 or above
 * @param given.cutoffFrequency *ν_c*, line pairs per millimetre on the sensor; above 0
 * @param given.defocusAberration *W₀₂₀*, wavelengths at the rim of the pupil; at most 200 either way
 * @param given.sphericalAberration *W₀₄₀*, wavelengths at the rim of the pupil; at most 20 either way
 * @returns a real number, the pupil being round: its size is the contrast left, and below zero light and dark have changed
 *   places. 0 at the cutoff and beyond. Accurate to 1e-7.
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes incoherent light, one wavelength, a circular pupil evenly lit and a slender cone.
 * Source: Hopkins, Proc. R. Soc. A 231 (1955) 91; Goodman, Introduction to Fourier Optics, ch. 6 (both from memory).
 * How it is computed: [README](README.md#otf).
 *
 * @example opticalTransfer({ spatialFrequency: 25, cutoffFrequency: 100, defocusAberration: 1, sphericalAberration: 0 }) // −0.068308
 */
export function opticalTransfer(given: Pupil & Named<'spatial-frequency' | 'cutoff-frequency'>): number {
  requireNotNegative('spatial-frequency', given.spatialFrequency);
  requirePositive('cutoff-frequency', given.cutoffFrequency);
  return transferAt(requirePupil(given), given.spatialFrequency / given.cutoffFrequency);
}

/**
 * The transfer at the share *s* of the cutoff.
 *
 * A quarter of the overlap is enough by symmetry. With x = cos t − s and y = η sin t both integrands are even and smooth:
 * (4/π) ∫ sin² t ∫ cos(8π s x [W₀₂₀ + 2 W₀₄₀ (x² + y² + s²)]) dη dt, t from 0 to arccos s, η from 0 to 1.
 */
export function transferAt({ defocusAberration: w020, sphericalAberration: w040 }: Pupil, s: number): number {
  if (!(s < 1)) return 0;
  const widest = Math.acos(s);
  const rate = 8 * Math.PI * s;
  const across = evenRule(0.28 * rate * (1 - s) * steepestFactor(w020, w040, s) + 10);
  let sum = 0;
  for (let k = 0; k < across.nodes.length; k++) {
    const cosine = Math.cos(widest * (across.nodes[k] as number));
    const x = cosine - s;
    const height = 1 - cosine * cosine;
    const onAxis = rate * x * (w020 + 2 * w040 * (x * x + s * s));
    const inner = w040 === 0 ? Math.cos(onAxis) : meanCosine(onAxis, rate * x * 2 * w040 * height);
    sum += (across.weights[k] as number) * height * inner;
  }
  return (4 / Math.PI) * widest * sum;
}

/** The largest size of W₀₂₀ + 2 W₀₄₀ times whatever the phase's slope multiplies it by: linear in it, so largest at an end. */
function steepestFactor(w020: number, w040: number, s: number): number {
  const most = Math.max(1, 3 * (1 - s) ** 2 + s * s);
  return Math.max(Math.abs(w020 + 2 * w040 * s * s), Math.abs(w020 + 2 * w040 * most));
}

/** Mean of cos(start + spread η²) over η from 0 to 1. */
function meanCosine(start: number, spread: number): number {
  const { nodes, weights } = evenRule(0.3 * Math.abs(spread) + 6);
  let sum = 0;
  for (let k = 0; k < nodes.length; k++)
    sum += (weights[k] as number) * Math.cos(start + spread * (nodes[k] as number) ** 2);
  return sum;
}
