import { requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { airyIntensity, encircledEnergy } from './airy-pattern.ts';
import { requireCount } from './count.ts';
import { evenRule } from './even-rule.ts';

/**
 * How the light of one point is shared out among the pixels, for a perfect lens in focus whose image of the point lies on
 * the middle of a pixel.
 *
 * Outwards through a wall of length p in the distance x from the middle flows ∫ E(r) x/(2π r²) dy, r² = x² + y², E the
 * encircled energy. What a pixel takes is what leaves through its four walls.
 *
 * @param given.pixelPitch *p*, centre to centre of square pixels that touch, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; above 0
 * @param columns how many columns of pixels, from the middle one to one side; a whole number from 1 to 400
 * @param rows the same for rows
 * @returns shares of all the point's light, `[column][row]` with the middle pixel at [0][0]; the other three quarters mirror
 *   them. Good to 2e-3 of the middle pixel's. Not what a file holds: no noise, no colour mosaic, no display curve.
 * @throws OutOfRange for anything not finite and above zero; RangeError for a count that is none
 *
 * Assumes what {@link encircledEnergy} assumes, and pixels sensitive over their whole square.
 * Source: the divergence theorem, applied to the encircled energy. Derived in [README](README.md#sampling).
 *
 * @example pixelLight({ pixelPitch: 0.006, wavelength: 0.00055, effectiveFNumber: 16 }, 1, 1)[0].at(0) // 0.3026
 */
export function pixelLight(
  given: Named<'pixel-pitch' | 'wavelength' | 'effective-f-number'>,
  columns: number,
  rows: number,
): readonly (readonly number[])[] {
  const unit =
    requirePositive('wavelength', given.wavelength) * requirePositive('effective-f-number', given.effectiveFNumber);
  const pitch = requirePositive('pixel-pitch', requirePositive('pixel-pitch', given.pixelPitch) / unit);
  requireCount('columns', columns, 1, 400);
  requireCount('rows', rows, 1, 400);
  const { nodes, weights } = evenRule(4);
  const known = new Map<number, number>();

  /** Through the right-hand wall of a pixel, to the right; on the left of the middle the flow is its mirror's. */
  function flow(column: number, row: number): number {
    if (column < 0) return -flow(-1 - column, row);
    const wall = 1000 * column + row;
    const before = known.get(wall);
    if (before !== undefined) return before;
    const x = column + 0.5;
    let sum = 0;
    for (let k = 0; k < nodes.length; k++) {
      const [above, below] = [row + nodes[k]! / 2, row - nodes[k]! / 2];
      sum += weights[k]! * (density(x, above) + density(x, below));
    }
    known.set(wall, (x * sum) / (4 * Math.PI));
    return flow(column, row);
  }

  function density(x: number, y: number): number {
    const square = x * x + y * y;
    return energyWithin(pitch * Math.sqrt(square)) / square;
  }

  const across = (column: number, row: number) => flow(column, row) - flow(column - 1, row);
  return Array.from({ length: columns }, (_, column) =>
    Array.from({ length: rows }, (__, row) => across(column, row) + across(row, column)),
  );
}

const step = 1 / 16;
const reach = 32;
let table: Float64Array | undefined;

/**
 * `encircledEnergy` for a radius in units of λ N_w, within 1e-4: a picture asks for it thousands of times a frame. Cubic
 * between tabulated values and slopes; far out 1 − 2/(π v), where the rings no longer count.
 */
function energyWithin(radius: number): number {
  if (radius >= reach) return 1 - 2 / (Math.PI * Math.PI * radius);
  table ??= tabulated();
  const at = radius / step;
  const k = 2 * Math.floor(at);
  const t = at % 1;
  const value = table[k]!;
  const slope = table[k + 1]!;
  const nextSlope = table[k + 3]!;
  const rise = table[k + 2]! - value;
  return value + t * (slope + t * (3 * rise - 2 * slope - nextSlope + t * (slope + nextSlope - 2 * rise)));
}

/** Values and slopes by turns; the slope of the energy is 2π r times the light per area, here per step of the table. */
function tabulated(): Float64Array {
  return Float64Array.from({ length: 2 * (reach / step + 2) }, (_, index) => {
    const imageRadius = step * (index >> 1);
    const place = { imageRadius, wavelength: 1, effectiveFNumber: 1 };
    return index % 2 === 0 ? encircledEnergy(place) : (step * Math.PI ** 2 * imageRadius * airyIntensity(place)) / 2;
  });
}
