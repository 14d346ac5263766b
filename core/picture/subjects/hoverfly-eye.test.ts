import { expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import type { Ellipsoid } from './ellipsoid.ts';
import { paintEye } from './hoverfly-eye.ts';

const ball: Ellipsoid = { middle: [0, 0, 0], axes: [1, 1, 1] };
const fine = { pitch: 0.001, shade: () => 1, glint: () => 0 };

function painted(x: number, y: number, sight: typeof fine = fine) {
  const sample = { red: 0, green: 0, blue: 0, height: 0, coverage: 1 };
  paintEye(ball, x, y, sight, sample);
  return sample;
}

/** How light the facets make a place, from −½ in a corner of three to 1 in the middle of one. */
const facetsAt = (x: number, y: number, sight = fine) => (painted(x, y, sight).blue / 0.05 - 0.75) / 0.3;

const places = [
  [0.003, 0.001],
  [0.013, -0.007],
  [-0.02, 0.011],
  [0.031, 0.029],
] as const;
const rounding = { absolute: 1e-9, because: 'rounding' };

it('an eye has facets with six sides: alike when turned by a sixth, and from one to the next', () => {
  const next = [0.045, 0.045 / Math.sqrt(3)] as const;
  expect(facetsAt(0, 0)).toEqual(closeTo(1, rounding));
  expect(facetsAt(...next)).toEqual(closeTo(1, rounding));
  expect(facetsAt(0, 2 * next[1])).toEqual(closeTo(1, rounding));
  const [cosine, sine] = [0.5, Math.sqrt(3) / 2];
  for (const [x, y] of places) {
    const here = facetsAt(x, y);
    expect(facetsAt(cosine * x - sine * y, sine * x + cosine * y)).toEqual(closeTo(here, rounding));
    expect(facetsAt(x + next[0], y + next[1])).toEqual(closeTo(here, rounding));
    expect(facetsAt(-x, y)).toEqual(closeTo(here, rounding));
    expect(here).toBeGreaterThan(-0.5 - 1e-9);
    expect(here).toBeLessThan(1);
  }
});

it('an eye shows facets as far as the grid can, and is shaded and mirrors as it is turned', () => {
  expect(facetsAt(0, 0, { ...fine, pitch: 0.03 })).toEqual(closeTo(0, rounding));
  expect(facetsAt(0, 0, { ...fine, pitch: 0.015 })).toEqual(closeTo(0.5, rounding));
  const [lit, dim] = [painted(0.3, 0.2), painted(0.3, 0.2, { ...fine, shade: () => 0.5 })];
  const glinting = painted(0.3, 0.2, { ...fine, glint: () => 0.25 });
  for (const colour of ['red', 'green', 'blue'] as const) {
    expect(dim[colour]).toEqual(closeTo(lit[colour] / 2, rounding));
    expect(glinting[colour]).toEqual(closeTo(lit[colour] + 0.25, rounding));
  }
});
