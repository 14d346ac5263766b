import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { smallScene, type SmallSurface } from '#tests/support/small-scenes.ts';
import { binnedScene } from './binned.ts';
import { projected } from './project.ts';
import { samplingGrid } from './sampling-grid.ts';
import { scaleAt } from './view.ts';

const view = { ...lifeSize, columns: 61, rows: 41, pitch: 0.01, focusHeight: 2 };
const { grid } = samplingGrid(view, 1, 0);

function seen(surface: SmallSurface, by = view) {
  const binned = binnedScene(smallScene({ columns: 101, rows: 81, pitch: 0.01 }, surface), 1, 1);
  return projected(binned, binned.surfaces[0]!, by, grid);
}

describe('a projected surface', () => {
  it('in the sharp plane is the scene itself, sample by sample', () => {
    const { light, coverage, height } = seen({ light: (x, y) => Math.sin(x * x + 7 * y), height: 2 });
    for (let y = -20; y <= 20; y++)
      for (let x = -30; x <= 30; x++) {
        expect(light[0]![(y + 20) * 61 + x + 30]).toBeCloseTo(Math.sin(x * x + 7 * y), 6);
      }
    expect(coverage.every((share) => share === 1)).toBe(true);
    expect(height.every((value) => value === 2)).toBe(true);
  });

  it.each([100, Infinity, -40])('on a slope shows each place at the scale of its own height, from %d mm', (from) => {
    const by = { ...view, entrancePupilDistance: from };
    const slope = (x: number) => 4 + x / 20;
    // Light that says where it comes from: between samples a straight line stays straight.
    const { light, height } = seen({ light: (x) => 0.5 + x / 200, height: slope }, by);
    for (let x = -30; x <= 30; x++) {
      const place = (light[0]![20 * 61 + x + 30]! - 0.5) * 200;
      expect(height[20 * 61 + x + 30]).toEqual(
        closeTo(slope(place), { absolute: 1e-3, because: 'the search stops at a hundredth of a sample' }),
      );
      expect(place * scaleAt(by, slope(place))).toEqual(
        closeTo(x, { absolute: 0.01, because: 'the search stops there' }),
      );
    }
  });

  it('finds the place of a height on what is twisted, too', () => {
    const twisted = (x: number, y: number) => 4 + x / 20 + y / 30 + (x * y) / 300;
    const across = seen({ light: (x) => 0.5 + x / 200, height: twisted });
    const down = seen({ light: (_, y) => 0.5 + y / 200, height: twisted });
    for (let y = -20; y <= 20; y += 5)
      for (let x = -30; x <= 30; x += 5) {
        const at = (y + 20) * 61 + x + 30;
        const [placeX, placeY] = [across.light[0]!, down.light[0]!].map((light) => (light[at]! - 0.5) * 200);
        const height = twisted(placeX!, placeY!);
        expect(across.height[at]).toEqual(closeTo(height, { absolute: 0.01, because: 'the search stops there' }));
        for (const [place, seenAt] of [
          [placeX!, x],
          [placeY!, y],
        ] as const)
          expect(place * scaleAt(view, height)).toEqual(
            closeTo(seenAt, { absolute: 0.02, because: 'the search stops at a hundredth of a sample' }),
          );
      }
  });

  it('looks the same from the left and from the right of an outline that stands high', () => {
    const { coverage } = seen({
      light: () => 1,
      height: (x) => (Math.abs(x) < 12 ? 9 : 0),
      coverage: (x) => (Math.abs(x) < 12 ? 1 : 0),
    });
    const row = Array.from(coverage.subarray(20 * 61, 21 * 61));
    [...row].reverse().forEach((share, x) => expect(share).toBeCloseTo(row[x]!, 5));
    expect(row.filter((share) => share > 0.5).length).toBeGreaterThan(23);
  });

  it('goes on beyond the rim of the scene as it ends', () => {
    const wide = samplingGrid({ ...view, columns: 201 }, 1, 0).grid;
    const binned = binnedScene(
      smallScene({ columns: 101, rows: 81, pitch: 0.01 }, { light: (x) => x, height: 2 }),
      1,
      1,
    );
    const { light } = projected(binned, binned.surfaces[0]!, view, wide);
    expect(light[0]![20 * 201]).toBe(-50);
    expect(light[0]![20 * 201 + 200]).toBe(50);
  });

  it('refuses what is not a number', () => {
    expect(() => seen({ light: (x) => (x === 3 ? NaN : 0), height: 2 })).toThrow(/not a finite number/);
  });
});
