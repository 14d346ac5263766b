import { describe, expect, it } from 'vitest';
import type { Scene } from '../scene.ts';
import type { SceneOptions } from './subject.ts';
import { subjectOf, subjects } from './subjects.ts';

const grid = (width: number, columns = 96, rows = 64): SceneOptions => ({
  columns,
  rows,
  pitch: width / columns,
  seed: 1,
});

/** Light seen from the front, one channel of it: surfaces over each other by their coverage. */
function seen({ columns, rows, surfaces }: Scene, channel = 1): Float64Array {
  const size = columns * rows;
  return Float64Array.from({ length: size }, (_, at) => {
    let [light, open] = [0, 1];
    for (const { albedo, coverage } of surfaces) {
      light += open * coverage[at]! * albedo[channel * size + at]!;
      open *= 1 - coverage[at]!;
    }
    return light;
  });
}

function spread(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}

it('there are seven subjects, each with a slug of its own', () => {
  expect(new Set(subjects.map(({ slug }) => slug)).size).toBe(7);
});

it('a subject there is not is refused with the names of those there are', () => {
  expect(() => subjectOf('unicorn')).toThrow(/unicorn.*slanted-scale.*stamp/);
});

describe.each(subjects.map((subject) => [subject.slug, subject] as const))('%s', (_, subject) => {
  const scene = subject.scene(grid(subject.width));

  it('has numbers everywhere: light from 0, heights within its depth, coverage from 0 to 1', () => {
    expect(scene.depth).toBe(subject.depth);
    for (const { albedo, height, coverage } of scene.surfaces) {
      expect(albedo.every((value) => value >= 0 && value < 4)).toBe(true);
      expect(coverage.every((value) => value >= 0 && value <= 1)).toBe(true);
      expect(height.every((value, at) => coverage[at] === 0 || (value >= -1e-6 && value <= subject.depth + 1e-6))).toBe(
        true,
      );
    }
  });

  it('covers everything with its last surface, and has something to see', () => {
    expect(scene.surfaces.at(-1)!.coverage.every((value) => value === 1)).toBe(true);
    expect(spread(seen(scene))).toBeGreaterThan(0.03);
  });

  it('reaches through its depth', () => {
    const heights = scene.surfaces.flatMap(({ height, coverage }) =>
      [...height].filter((__, at) => coverage[at]! > 0.5),
    );
    expect(Math.max(...heights) - Math.min(...heights)).toBeGreaterThan(0.6 * subject.depth);
  });

  it('is the same for the same seed, another for another', () => {
    expect(seen(subject.scene(grid(subject.width)))).toEqual(seen(scene));
    expect(seen(subject.scene({ ...grid(subject.width), seed: 2 }))).not.toEqual(seen(scene));
  });

  it('has no front surface lie below a later one that hides it', () => {
    for (const [index, front] of scene.surfaces.entries()) {
      for (const later of scene.surfaces.slice(index + 1)) {
        const below = front.height.filter(
          (height, at) => front.coverage[at]! > 0 && later.coverage[at] === 1 && height < later.height[at]!,
        );
        expect(below).toHaveLength(0);
      }
    }
  });

  it('is the same subject on another grid: means over four samples agree with a coarser one', () => {
    const fine = seen(subject.scene(grid(subject.width, 192, 128)));
    const coarse = seen(scene);
    let apart = 0;
    for (let row = 0; row < 64; row++) {
      for (let column = 0; column < 96; column++) {
        const at = 2 * row * 192 + 2 * column;
        const mean = (fine[at]! + fine[at + 1]! + fine[at + 192]! + fine[at + 193]!) / 4;
        apart += Math.abs(mean - coarse[row * 96 + column]!) / coarse.length;
      }
    }
    expect(apart).toBeLessThan(0.05);
  });

  it('moves under the camera when another place of it is in the middle', () => {
    const step = 4;
    const pitch = subject.width / 96;
    const moved = seen(subject.scene({ ...grid(subject.width), centre: { x: step * pitch, y: 0 } }));
    const still = seen(scene);
    // Slopes at the rim of the grid are one-sided, so the outermost column is left out.
    for (let row = 1; row < 63; row++) {
      for (let column = 1; column < 95 - step; column++) {
        expect(moved[row * 96 + column]).toBeCloseTo(still[row * 96 + column + step]!, 4);
      }
    }
  });

  it('refuses a grid that is none, in words', () => {
    expect(() => subject.scene({ ...grid(1), columns: 0 })).toThrow(/0 columns/);
    expect(() => subject.scene({ ...grid(1), pitch: 0 })).toThrow(/pixel-pitch is 0/);
    expect(() => subject.scene({ ...grid(1), seed: NaN })).toThrow(/seed of the scene is NaN/);
  });
});
