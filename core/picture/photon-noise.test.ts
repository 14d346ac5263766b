import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lifeSize } from '#tests/support/in-view.ts';
import { count, withNoise } from './photon-noise.ts';

const draws = 40000;

describe('count', () => {
  it.each([0.3, 5, 40, 64, 900])('has the mean and the variance %d', (expected) => {
    const chance = chanceFrom(7);
    const counts = Array.from({ length: draws }, () => count(expected, chance));
    const mean = counts.reduce((sum, value) => sum + value, 0) / draws;
    const variance = counts.reduce((sum, value) => sum + (value - mean) ** 2, 0) / draws;
    const because = 'five standard deviations of so many draws';
    expect(mean).toEqual(closeTo(expected, { absolute: 5 * Math.sqrt(expected / draws), because }));
    expect(variance).toEqual(closeTo(expected, { relative: 5 * Math.sqrt((2 + 1 / expected) / draws), because }));
    expect(counts.every((value) => Number.isInteger(value) && value >= 0)).toBe(true);
  });

  it('is nothing where there is no light', () => {
    expect(count(0, chanceFrom(1))).toBe(0);
    expect(count(-0.001, chanceFrom(1))).toBe(0);
  });
});

describe('withNoise', () => {
  const picture = { columns: 40, rows: 30, channels: 1, light: new Float32Array(1200).fill(0.25) } as const;

  it('is the same noise for the same seed and another for another', () => {
    const noisy = (seed: number) => withNoise(picture, { ...lifeSize, electronsAtWhite: 400, seed }).light;
    expect(noisy(3)).toEqual(noisy(3));
    expect(noisy(3)).not.toEqual(noisy(4));
  });

  it('is a tenth of the signal where white gives 400 electrons and the light is a quarter', () => {
    const { light } = withNoise(picture, { ...lifeSize, electronsAtWhite: 400 });
    const spread = Math.sqrt(light.reduce((sum, value) => sum + (value - 0.25) ** 2, 0) / light.length);
    expect(spread).toEqual(closeTo(0.025, { relative: 0.1, because: 'five standard deviations of 1200 draws' }));
  });

  it('has the variances of light and of reading added', () => {
    const readNoise = 20;
    const { light } = withNoise(picture, { ...lifeSize, electronsAtWhite: 400, readNoise });
    const mean = light.reduce((sum, value) => sum + value, 0) / light.length;
    const spread = Math.sqrt(light.reduce((sum, value) => sum + (value - mean) ** 2, 0) / light.length);
    const because = 'five standard deviations of 1200 draws';
    expect(400 * spread).toEqual(closeTo(Math.sqrt(100 + readNoise ** 2), { relative: 0.1, because }));
    expect(400 * mean).toEqual(closeTo(100, { absolute: (5 * Math.sqrt(500)) / Math.sqrt(1200), because }));
  });

  it('is the counts themselves where reading adds nothing', () => {
    const chance = chanceFrom(3);
    const { light } = withNoise(picture, { ...lifeSize, electronsAtWhite: 400, seed: 3 });
    expect(light).toEqual(picture.light.map(() => count(100, chance) / 400));
  });

  it('draws the same light whether reading adds to it or not at all', () => {
    const view = { ...lifeSize, electronsAtWhite: 400, seed: 3 };
    expect(withNoise(picture, { ...view, readNoise: 0 }).light).toEqual(withNoise(picture, view).light);
  });

  it('is not there without electrons', () => {
    expect(withNoise(picture, lifeSize)).toBe(picture);
  });
});
