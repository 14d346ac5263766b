import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { Picture } from './picture.ts';
import type { Scene } from './scene.ts';
import { darkenedBehind, twoExposures } from './two-exposures.ts';

const picture = (...light: number[]): Picture => ({
  columns: light.length,
  rows: 1,
  channels: 1,
  light: Float32Array.from(light),
});

describe('twoExposures', () => {
  it('gives each its share of the light', () => {
    expect([...twoExposures(picture(1, 0), picture(0, 1), 0.25).light]).toEqual([0.75, 0.25]);
  });

  it('is either alone at the ends, and keeps what both have alike', () => {
    expect(twoExposures(picture(1, 0.5), picture(0, 1), 0).light).toEqual(picture(1, 0.5).light);
    expect(twoExposures(picture(1, 0.5), picture(0, 1), 1).light).toEqual(picture(0, 1).light);
    expect(twoExposures(picture(0.5), picture(0.5), 0.375).light).toEqual(picture(0.5).light);
  });

  it('refuses a share above 1 by name, and pictures of unlike shape', () => {
    expect(() => twoExposures(picture(1), picture(1), 1.5)).toThrow(OutOfRange);
    expect(() => twoExposures(picture(1), picture(1), 1.5)).toThrow(/ambient-share is 1.5/);
    expect(() => twoExposures(picture(1), picture(1, 1), 0.5)).toThrow(RangeError);
  });
});

describe('darkenedBehind', () => {
  const scene: Scene = {
    columns: 2,
    rows: 1,
    pitch: 1,
    depth: 3,
    surfaces: [
      {
        albedo: Float32Array.from([1, 1, 0.5, 0.5, 0.25, 0.25]),
        height: Float32Array.from([3, 0]),
        coverage: Float32Array.from([1, 1]),
      },
    ],
  };

  it('leaves what stands above the ground, and darkens the ground in all channels', () => {
    expect([...darkenedBehind(scene, 0.5).surfaces[0]!.albedo]).toEqual([1, 0.5, 0.5, 0.25, 0.25, 0.125]);
  });

  it('leaves the scene that it is given as it was', () => {
    darkenedBehind(scene, 0);
    expect(scene.surfaces[0]!.albedo[1]).toBe(1);
  });

  it('refuses more than all of the light', () => {
    expect(() => darkenedBehind(scene, 1.1)).toThrow(OutOfRange);
  });
});
