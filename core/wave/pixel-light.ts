import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import type { AiryTable } from './airy-table.ts';
import { requireCone } from './require.ts';

/**
 * How the light of one point is shared out among the pixels, for a perfect lens in focus whose image of the point lies on
 * the middle of a pixel.
 *
 * Outwards through a wall of length p in the distance x from the middle flows ∫ E(r) x/(2π r²) dy, r² = x² + y², E the
 * encircled energy. What a pixel takes is what leaves through its four walls.
 *
 * @param given.pixelPitch *p*, centre to centre of square pixels that touch, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param pattern the Airy pattern as `airyTable` gives it, eight rings in about 130 steps or finer
 * @param columns how many columns of pixels, from the middle one to one side; a whole number
 * @param rows the same for rows
 * @returns shares of all the point's light, `[column][row]` with the middle pixel at [0][0]; the other three quarters mirror
 *   them. Good to 2e-3 of the middle pixel's. Not what a file holds: no noise, no colour mosaic, no display curve.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes what `encircledEnergy` assumes, and pixels sensitive over their whole square.
 * Source: the divergence theorem, applied to the encircled energy. Derived in [README](README.md#sampling).
 */
export function pixelLight(
  { pixelPitch, wavelength, effectiveFNumber }: Named<'pixel-pitch' | 'wavelength' | 'effective-f-number'>,
  pattern: AiryTable,
  columns: number,
  rows: number,
): readonly (readonly number[])[] {
  const unit = requirePositive('wavelength', wavelength) * requireCone(effectiveFNumber);
  const pitch = requirePositive('pixel-pitch', pixelPitch) / unit;
  const known: number[] = [];

  /** Through the right-hand wall of a pixel, to the right; on the left of the middle the flow is its mirror's. */
  function flow(column: number, row: number): number {
    if (column < 0) return -flow(-1 - column, row);
    return (known[column * (columns + rows) + row] ??= sixPoints.reduce(
      (sum, [place, share]) => sum + share * (density(column + 0.5, row + place) + density(column + 0.5, row - place)),
      0,
    ));
  }

  function density(x: number, y: number): number {
    const square = x * x + y * y;
    return (x * energyWithin(pitch * Math.sqrt(square), pattern)) / (2 * Math.PI * square);
  }

  const across = (column: number, row: number) => flow(column, row) - flow(column - 1, row);
  return Array.from({ length: columns }, (_, column) =>
    Array.from({ length: rows }, (__, row) => across(column, row) + across(row, column)),
  );
}

/** The Gauss-Legendre rule of six points on a wall of length 1: places either side of its middle, and the share of each. */
const sixPoints = [
  [0.11930959304, 0.23395696729],
  [0.33060469323, 0.18038078652],
  [0.4662347571, 0.08566224619],
] as const;

/** `encircledEnergy` by radius in units of λ N_w: cubic between the table's values; beyond it the first terms for large radii. */
function energyWithin(radius: number, { dark, intensities, energies }: AiryTable): number {
  const step = dark.at(-1)! / (energies.length - 1);
  const k = Math.floor(radius / step);
  if (k >= energies.length - 1) {
    const v = Math.PI * radius;
    return 1 - (2 - Math.cos(2 * v) / v) / (Math.PI * v);
  }
  const t = radius / step - k;
  /** The energy grows by 2π r times the light per area; here per step of the table. */
  const slope = (at: number) => (step * step * at * Math.PI ** 2 * intensities[at]!) / 2;
  const [before, after] = [slope(k), slope(k + 1)];
  const rise = energies[k + 1]! - energies[k]!;
  return energies[k]! + t * (before + t * (3 * rise - 2 * before - after + t * (before + after - 2 * rise)));
}
