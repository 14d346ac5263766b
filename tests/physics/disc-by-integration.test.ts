import { describe, expect, it } from 'vitest';
import { illuminanceByInverseSquare } from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';

const radius = 50;
const luminance = 700;
const distances = [5, 20, 50, 100, 250, 1000];

/** What a small piece of the disc, off the axis by *off*, gives on the axis: both cosines and the square of the distance. */
function pieceAt(off: number, distance: number, area: number): number {
  const square = off ** 2 + distance ** 2;
  return (luminance * area * distance ** 2) / square ** 2;
}

/** In rings, each taken at its middle. */
function byRings(distance: number): number {
  const rings = 20_000;
  const width = radius / rings;
  let sum = 0;
  for (let ring = 0; ring < rings; ring++) {
    const off = (ring + 0.5) * width;
    sum += pieceAt(off, distance, 2 * Math.PI * off * width);
  }
  return sum;
}

/** In squares, taken whole where their middle lies on the disc. */
function bySquares(distance: number): number {
  const cells = 1000;
  const side = (2 * radius) / cells;
  let sum = 0;
  for (let row = 0; row < cells; row++) {
    for (let column = 0; column < cells; column++) {
      const off = Math.hypot((row + 0.5) * side - radius, (column + 0.5) * side - radius);
      if (off <= radius) sum += pieceAt(off, distance, side ** 2);
    }
  }
  return sum;
}

describe.each(distances)('a disc of 100 mm seen from %i mm', (flashDistance) => {
  const given = { luminance, sourceSize: 2 * radius, flashDistance };

  it('gives what its rings give together', () => {
    expect(illuminanceFromDisc(given)).toEqual(
      closeTo(byRings(flashDistance), { relative: 1e-6, because: 'the midpoint rule on 20000 rings' }),
    );
  });

  it('gives what its squares give together', () => {
    expect(illuminanceFromDisc(given)).toEqual(
      closeTo(bySquares(flashDistance), { relative: 1e-3, because: 'the rim is made of steps' }),
    );
  });

  it('gives less than the inverse square law promises', () => {
    expect(illuminanceFromDisc(given)).toBeLessThan(illuminanceByInverseSquare(given));
  });
});
