/** The light of a source, relative, from 380 to 780 nm in steps of 5 nm: one value for each row of `cie-1931.ts`. */
export type Illuminant = readonly number[];

/**
 * Average daylight, CIE standard illuminant D65: the white of screens.
 *
 * Table: ISO/CIE 11664-2, five-nanometre values to two decimals; read in an open-source library's copy and held to its white point.
 */
// prettier-ignore
export const daylight: Illuminant = [
  49.98, 52.31, 54.65, 68.7, 82.75, 87.12, 91.49, 92.46, 93.43, 90.06, 86.68, 95.77, 104.86, 110.94, 117.01, 117.41, 117.81,
  116.34, 114.86, 115.39, 115.92, 112.37, 108.81, 109.08, 109.35, 108.58, 107.8, 106.3, 104.79, 106.24, 107.69, 106.05, 104.41,
  104.23, 104.05, 102.02, 100, 98.17, 96.33, 96.06, 95.79, 92.24, 88.69, 89.35, 90.01, 89.8, 89.6, 88.65, 87.7, 85.49, 83.29,
  83.49, 83.69, 81.86, 80.03, 80.12, 80.21, 81.25, 82.28, 80.28, 78.28, 74, 69.72, 70.67, 71.61, 72.98, 74.35, 67.98, 61.6,
  65.74, 69.89, 72.49, 75.09, 69.34, 63.59, 55.01, 46.42, 56.61, 66.81, 65.09, 63.38,
];

/** The same power at every wavelength: CIE illuminant E, for computing. */
export const equalEnergy: Illuminant = daylight.map(() => 100);
