import { describe, expect, it } from 'vitest';
import { requireScene } from '../scene.ts';
import { coinBeforePosts } from './coin-before-posts.ts';

const grid = { columns: 240, rows: 160, pitch: 0.3, seed: 1 };
const given = { coinWidth: 18, postSpacing: 9, behind: 60 };

/** Row by row from the top left, the light of one surface in the middle of the picture's height. */
const middleRow = (light: Float32Array) => light.slice(80 * 240, 81 * 240);

describe('a coin before a row of posts', () => {
  it('has its coin in the sharp plane and the posts so far behind', () => {
    const scene = coinBeforePosts(given).scene(grid);
    expect(requireScene(scene)).toEqual({ low: 0, high: 60 });
    expect(scene.depth).toBe(60);
  });

  it('shows the coin as wide as it is said to be', () => {
    const [coin] = coinBeforePosts(given).scene(grid).surfaces;
    const across = middleRow(coin!.coverage).reduce((sum, share) => sum + share, 0) * grid.pitch;
    expect(Math.abs(across - 18)).toBeLessThan(grid.pitch);
  });

  it('has a post every so many millimetres', () => {
    const [, posts] = coinBeforePosts(given).scene(grid).surfaces;
    const red = middleRow(posts!.albedo);
    const starts = [...red.keys()].filter((at) => at > 0 && red[at]! > 0.4 && red[at - 1]! <= 0.4);
    const steps = starts.slice(1).map((at, index) => (at - starts[index]!) * grid.pitch);
    expect(starts).toHaveLength(8);
    for (const step of steps) expect(Math.abs(step - 9)).toBeLessThanOrEqual(grid.pitch);
  });

  it('draws the posts in the sharp plane where nothing is behind it, and as an even ground where they are finer than the grid', () => {
    const flat = coinBeforePosts({ ...given, behind: 0, postSpacing: 0 }).scene(grid);
    expect(requireScene(flat)).toEqual({ low: 0, high: 0 });
    const red = middleRow(flat.surfaces[1]!.albedo);
    expect(Math.max(...red) - Math.min(...red)).toBeLessThan(0.15);
  });
});
