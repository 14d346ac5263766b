import { expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { findComb } from './find-comb.ts';

const kinds: Readonly<Record<string, (chance: () => number) => () => number>> = {
  noise: (chance) => chance,
  'smooth noise': (chance) => {
    let value = 0;
    return () => (value = 0.8 * value + chance() - 0.5);
  },
  'a wandering tone': (chance) => {
    let value = 0;
    return () => (value += chance() - 0.5);
  },
  'uneven bars': (chance) => {
    let [value, left] = [0, 0];
    return () => {
      if (left-- <= 0) [value, left] = [1 - value, 2 + 12 * chance()];
      return value + 0.02 * chance();
    };
  },
  'one edge': (chance) => {
    let at = 0;
    return () => (at++ > 150 ? 1 : 0) + 0.01 * chance();
  },
};
it.each(Object.entries(kinds))('finds no comb in %s', (_, make) => {
  const found = Array.from({ length: 25 }, (_, seed) => {
    const next = make(chanceFrom(seed));
    return findComb(Float64Array.from({ length: 300 + 20 * seed }, next)).outcome;
  });
  expect(found.filter((outcome) => outcome === 'comb').length).toBeLessThanOrEqual(0);
});
