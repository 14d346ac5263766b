import { describe, expect, it } from 'vitest';
import { type Colour, emptySurface } from './canvas.ts';
import { type Capsule, layCapsule } from './capsule.ts';
import type { SceneOptions } from './subject.ts';

const options: SceneOptions = { columns: 41, rows: 41, pitch: 0.1, seed: 1 };
const middle = 20 * 41 + 20;
const across = (height: number, radius: number, colour: Colour): Capsule => ({
  from: [-3, 0, height],
  to: [3, 0, height],
  radii: [radius, radius],
  colour,
});
const upright = (height: number, radius: number, colour: Colour): Capsule => ({
  ...across(height, radius, colour),
  from: [0, -3, height],
  to: [0, 3, height],
});
const [red, blue] = [
  [1, 0, 0],
  [0, 0, 1],
] as const;

/** The rods laid in this order, seen in the middle where they cross. */
function crossing(...rods: readonly Capsule[]) {
  const surface = emptySurface(options);
  for (const rod of rods) layCapsule(surface, options, rod);
  const size = options.columns * options.rows;
  const { albedo, height, coverage } = surface;
  return {
    red: albedo[middle]!,
    blue: albedo[2 * size + middle]!,
    height: height[middle]!,
    coverage: coverage[middle]!,
    surface,
  };
}

describe('rods that cross', () => {
  it('are the same in whatever order they are laid: the nearer one is seen', () => {
    const [near, far] = [across(2, 0.3, red), upright(1, 0.5, blue)];
    const [one, other] = [crossing(near, far), crossing(far, near)];
    expect({ ...one, surface: 0 }).toEqual({ ...other, surface: 0 });
    expect(one.blue).toBe(0);
    expect(one.height).toBeCloseTo(2.3, 6);
    expect(one.coverage).toBe(1);
  });

  it('let as much of a thick one be seen behind a hair as the hair leaves open', () => {
    const [hair, thick] = [across(2, 0.01, red), upright(1, 0.5, blue)];
    const alone = crossing(hair);
    expect(alone.coverage).toBeCloseTo(0.2, 6);
    for (const both of [crossing(hair, thick), crossing(thick, hair)]) {
      expect(both.coverage).toBe(1);
      expect(both.red).toBeCloseTo(0.2 * alone.red, 6);
      expect(both.blue).toBeCloseTo(0.8 * crossing(thick).blue, 6);
      expect(both.height).toBeCloseTo(1.5, 6);
    }
  });

  it('cover of each sample what a rod so thin covers', () => {
    const { surface } = crossing(across(2, 0.013, red));
    const column = Array.from({ length: 41 }, (_, row) => surface.coverage[row * 41 + 20]!);
    expect(column.reduce((sum, share) => sum + share) * options.pitch).toBeCloseTo(0.026, 6);
  });
});
