import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { chanceFrom } from './chance-from.ts';

const draws = 40_000;
const drawn = (seed: number, count = draws) => {
  const chance = chanceFrom(seed);
  return Array.from({ length: count }, chance);
};
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const because = 'five standard deviations of so many draws';

describe('chanceFrom', () => {
  it('gives the same numbers for the same seed, and others for another', () => {
    expect(drawn(3, 20)).toEqual(drawn(3, 20));
    expect(drawn(3, 20)).not.toEqual(drawn(4, 20));
  });

  it('stays what it is from one version of the library to the next', () => {
    expect(drawn(1, 3)).toEqual([0.727369170403108, 0.3127701776102185, 0.20183088560588658]);
    expect(drawn(-7, 2)).toEqual([0.03287524497136474, 0.39503441262058914]);
  });

  it('is even from 0 to 1, in its mean, its variance and its tenths', () => {
    const values = drawn(7);
    expect(mean(values)).toEqual(closeTo(0.5, { absolute: 5 * Math.sqrt(1 / 12 / draws), because }));
    expect(mean(values.map((value) => (value - 0.5) ** 2))).toEqual(
      closeTo(1 / 12, { absolute: 5 * Math.sqrt(1 / 180 / draws), because }),
    );
    for (let tenth = 0; tenth < 10; tenth++) {
      const share = values.filter((value) => Math.floor(10 * value) === tenth).length / draws;
      expect(share).toEqual(closeTo(0.1, { absolute: 5 * Math.sqrt(0.09 / draws), because }));
    }
  });

  it('starts anywhere for neighbouring seeds, and one number says nothing of the next', () => {
    const firsts = Array.from({ length: draws }, (_, seed) => chanceFrom(seed)());
    for (const values of [firsts, drawn(11)]) {
      const product = mean(values.slice(1).map((value, k) => (value - 0.5) * (values[k]! - 0.5)));
      expect(product).toEqual(closeTo(0, { absolute: 5 / 12 / Math.sqrt(draws), because }));
      expect(mean(values)).toEqual(closeTo(0.5, { absolute: 5 * Math.sqrt(1 / 12 / draws), because }));
    }
  });
});
