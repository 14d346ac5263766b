import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { edgeTerm, polygonIlluminance } from './polygon-illuminance.ts';
import type { Vector } from './vector.ts';

const facingUp = { point: [0, 0, 0], normal: [0, 0, 1] } as const;
const square = (half: number, height: number): Vector[] => [
  [-half, -half, height],
  [half, -half, height],
  [half, half, height],
  [-half, half, height],
];

describe('polygonIlluminance', () => {
  it('is four times the catalogued factor of a corner for a square over the middle, times π', () => {
    const corner = 0.13853160599489298;
    const because = 'the catalogue’s formula in double precision';
    expect(polygonIlluminance(square(1, 1), facingUp)).toEqual(
      closeTo(4 * Math.PI * corner, { relative: 1e-14, because }),
    );
  });

  it('tends to π for a square that fills the sky', () => {
    const sky = polygonIlluminance(square(1e6, 1), facingUp);
    expect(sky).toEqual(
      closeTo(Math.PI, { relative: 1e-9, because: 'what is left at the horizon goes as its square' }),
    );
  });

  it('tends to area over distance squared for a small square', () => {
    const small = polygonIlluminance(square(0.0005, 10), facingUp);
    expect(small).toEqual(
      closeTo(1e-6 / 100, { relative: 1e-8, because: 'the next term is of the order of size over distance squared' }),
    );
  });

  it('is halved where the horizon runs through the middle of the square', () => {
    const upright: Vector[] = [
      [-1, 2, -1],
      [1, 2, -1],
      [1, 2, 1],
      [-1, 2, 1],
    ].map(([x, y, z]) => [x!, y!, z!]);
    const half: Vector[] = [
      [-1, 2, 0],
      [1, 2, 0],
      [1, 2, 1],
      [-1, 2, 1],
    ];
    const turned = upright.toReversed();
    const [whole, above] = [turned, half.toReversed()].map((corners) => polygonIlluminance(corners, facingUp));
    expect(above).toBeGreaterThan(0.01);
    expect(whole).toEqual(closeTo(above!, { relative: 1e-14, because: 'the same polygon once cut' }));
  });

  it('refuses a corner that is no place', () => {
    const corners = square(1, 1).map((corner, index) => (index === 2 ? ([0, Infinity, 1] as const) : corner));
    expect(() => polygonIlluminance(corners, facingUp)).toThrow(OutOfRange);
  });

  it('is nothing for a polygon below the horizon', () => {
    expect(polygonIlluminance(square(1, -1).toReversed(), facingUp)).toBe(0);
  });
});

describe('edgeTerm', () => {
  it('is nothing for an edge of no length', () => {
    expect(edgeTerm([1, 1, 1], [1, 1, 1], [0, 0, 1])).toBe(0);
  });
});
