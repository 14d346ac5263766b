import besselj0 from '@stdlib/math-base-special-besselj0';
import besselj1 from '@stdlib/math-base-special-besselj1';

/** The k-th positive zero of J0: McMahon's guess and Newton's rule. */
function zeroOfJ0(k: number): number {
  const beta = (k - 0.25) * Math.PI;
  let zero = beta + 1 / (8 * beta);
  for (let round = 0; round < 4; round++) zero += besselj0(zero) / besselj1(zero);
  return zero;
}

/** The values of v = π r/(λ N_w) at which the first *count* terms of {@link fourierBesselTransfer} want the intensity. */
export const placesOfIntensity = (count: number): number[] =>
  Array.from({ length: count }, (_, k) => zeroOfJ0(k + 1) / 2);

/**
 * The Hankel transform of the image of a point at the share *s* of the cutoff, for tests: ½ ∫ I(v) J0(2 s v) v dv.
 *
 * A transfer that ends at the cutoff is a Fourier-Bessel series whose coefficients are the intensities at half the zeros
 * of J0, so that the endless integral becomes a sum: Σ I(j/2) J0(j s)/(4 J1(j)²).
 *
 * @param places from {@link placesOfIntensity}
 * @param intensities there, relative to the middle of a perfect image
 */
export function fourierBesselTransfer(places: readonly number[], intensities: readonly number[], s: number): number {
  return places.reduce(
    (sum, v, k) => sum + ((intensities[k] as number) * besselj0(2 * v * s)) / (4 * besselj1(2 * v) ** 2),
    0,
  );
}
