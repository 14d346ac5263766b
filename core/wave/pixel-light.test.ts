import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyIntensity, encircledEnergy } from './airy-pattern.ts';
import { airyTable } from './airy-table.ts';
import { pixelLight } from './pixel-light.ts';

const green = { wavelength: 0.00055, effectiveFNumber: 16 };
const pattern = airyTable(8, 132);
const unit = green.wavelength * green.effectiveFNumber;

/** The other route: the intensity summed over a fine raster of one pixel. */
function summed(pixelPitch: number, column: number, row: number): number {
  const count = 60;
  const middles = Array.from({ length: count }, (_, k) => (k + 0.5) / count - 0.5);
  const rows = middles.map((y) =>
    middles.reduce((sum, x) => {
      const imageRadius = pixelPitch * Math.hypot(column + x, row + y);
      return sum + airyIntensity({ ...green, imageRadius });
    }, 0),
  );
  // All the light of the pattern is 4/π (λ N_w)² of its brightness in the middle.
  return (rows.reduce((sum, part) => sum + part, 0) * (pixelPitch / count) ** 2 * Math.PI) / 4 / unit ** 2;
}

describe('pixelLight', () => {
  it.each([0.2, 0.7, 2.5])('is the intensity summed over the pixel, for a pitch of %s λ N_w', (pitch) => {
    const pixelPitch = pitch * unit;
    const light = pixelLight({ ...green, pixelPitch }, pattern, 5, 4);
    for (const [column, row] of [
      [0, 0],
      [1, 0],
      [0, 2],
      [2, 1],
      [4, 3],
    ] as const) {
      const expected = summed(pixelPitch, column, row);
      const because = 'interpolated energy and four points to half a wall; the raster of the sum';
      expect(light[column]![row]).toEqual(closeTo(expected, { absolute: 1e-3 * light[0]![0]!, because }));
    }
  });

  it('adds up to the light of the square it covers, which lies between those of the circles inside and around it', () => {
    const given = { ...green, pixelPitch: 0.006 };
    const [middle, side, corner] = [1, 2, 4];
    const light = pixelLight(given, pattern, 6, 6).flatMap((column, i) =>
      column.map((share, j) => share * (i === 0 && j === 0 ? middle : i === 0 || j === 0 ? side : corner)),
    );
    const total = light.reduce((sum, share) => sum + share, 0);
    expect(total).toBeGreaterThan(encircledEnergy({ ...green, imageRadius: 5.5 * 0.006 }));
    expect(total).toBeLessThan(encircledEnergy({ ...green, imageRadius: 5.5 * 0.006 * Math.SQRT2 }));
  });

  it('depends on the pitch in units of λ N_w alone, and mirrors in the diagonal', () => {
    const one = pixelLight({ ...green, pixelPitch: 0.006 }, pattern, 3, 3);
    const other = pixelLight({ wavelength: 0.0011, effectiveFNumber: 16, pixelPitch: 0.012 }, pattern, 3, 3);
    expect(other).toEqual(one);
    expect(one[2]![1]).toBe(one[1]![2]);
  });

  it('gives nearly everything to the middle pixel where pixels are coarse, and never less than nothing to any', () => {
    const shares = pixelLight({ wavelength: 0.00038, effectiveFNumber: 0.97, pixelPitch: 0.03 }, pattern, 8, 8);
    expect(shares[0]![0]).toBeGreaterThan(0.99);
    expect(Math.min(...shares.flat())).toBeGreaterThan(0);
  });

  it('refuses a pitch and a wavelength that are none by name', () => {
    expect(() => pixelLight({ ...green, pixelPitch: 0 }, pattern, 1, 1)).toThrow(OutOfRange);
    expect(() => pixelLight({ ...green, pixelPitch: NaN }, pattern, 1, 1)).toThrow(/pixel-pitch is NaN/);
    expect(() => pixelLight({ pixelPitch: 1, wavelength: -1, effectiveFNumber: 8 }, pattern, 1, 1)).toThrow(
      /wavelength is -1/,
    );
  });
});
