import { expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { heightOfEllipsoid, inside, normalOf, outlineOf, type Ellipsoid } from './ellipsoid.ts';

const egg: Ellipsoid = { middle: [1, -2, 3], axes: [2, 1.5, 0.8] };
const rounding = { absolute: 1e-12, because: 'rounding' };

it('an ellipsoid has its top over its middle, its outline at its half axes', () => {
  expect(inside(egg, 1, -2)).toBe(1);
  for (const [x, y] of [
    [3, -2],
    [-1, -2],
    [1, -0.5],
    [1, -3.5],
  ] as const) {
    expect(inside(egg, x, y)).toEqual(closeTo(0, rounding));
    expect(heightOfEllipsoid(egg, x, y)).toEqual(closeTo(3, rounding));
  }
  expect(inside(egg, 4, -2)).toBeLessThan(0);
  expect(heightOfEllipsoid(egg, 4, -2)).toBe(3);
  expect(heightOfEllipsoid(egg, 1, -2)).toBe(3.8);
});

it('an ellipsoid is turned square to its own slope everywhere, and to the side at its outline', () => {
  const step = 1e-6;
  for (const [x, y] of [
    [1, -2],
    [2.1, -2.4],
    [0, -1.3],
    [0.4, -2.9],
  ] as const) {
    const slope = (dx: number, dy: number) =>
      (heightOfEllipsoid(egg, x + dx, y + dy) - heightOfEllipsoid(egg, x - dx, y - dy)) / (2 * step);
    const [nx, ny, nz] = normalOf(egg, x, y);
    expect(Math.hypot(nx, ny, nz)).toEqual(closeTo(1, rounding));
    expect(-nx / nz).toEqual(closeTo(slope(step, 0), { absolute: 1e-6, because: 'a difference for a slope' }));
    expect(-ny / nz).toEqual(closeTo(slope(0, step), { absolute: 1e-6, because: 'a difference for a slope' }));
  }
  const side = normalOf(egg, 3, -2);
  expect(side[0]).toEqual(closeTo(1, rounding));
  expect(side[2]).toEqual(closeTo(0, { absolute: 1e-6, because: 'a root of rounding' }));
});

it('the way to the outline of a ball is told near it', () => {
  const ball: Ellipsoid = { middle: [0, 0, 0], axes: [2, 2, 2] };
  for (const off of [0.02, -0.02])
    expect(outlineOf(ball, inside(ball, 2 + off, 0))).toEqual(
      closeTo(off, { absolute: 2e-4, because: 'off²/2r more than off' }),
    );
  expect(outlineOf({ ...ball, axes: [1, 3, 1] }, 0.5)).toBe(-0.25);
});
